### Gap and meter readings in the Measure room.

gaps-none = Haga clic en una junta del dibujo y escriba su abertura. Con Enter pasa a la siguiente que conviene medir. Una junta cerrada también cuenta: escriba 0.
gaps-count = { $count ->
    [one] 1 abertura medida, { $open } abiertas. Haga clic en juntas del dibujo para agregar más.
   *[other] { $count } aberturas medidas, { $open } abiertas. Haga clic en juntas del dibujo para agregar más.
}
gaps-column-joint = junta
gaps-column-gap = abertura
gaps-column-caulk = sellador
gaps-column-date = otro día
gaps-show = Mostrar esta junta
gap-reading = Lectura de abertura { $number }
gap-reading-date = Fecha de la lectura de abertura { $number }
gap-reading-remove = Quitar la lectura de abertura { $number }
undo-remove-gap = Quitar abertura

meter-column-section = sección
meter-column-board = tabla
meter-column-reading = medidor %
meter-column-setting = medidor puesto en
meter-add = Agregar lectura del medidor
meter-reading = Lectura del medidor { $number }
meter-reading-section = Sección de la lectura del medidor { $number }
meter-reading-board = Tabla de la lectura del medidor { $number }
meter-reading-temperature = Temperatura de la madera { $number }
meter-reading-setting = Ajuste de la lectura del medidor { $number }
meter-reading-remove = Quitar la lectura del medidor { $number }
undo-remove-meter-reading = Quitar lectura del medidor
# A link under a gap that is too wide to be one.
gap-meant = Junta { $joint }: { $typed } es muy ancho. ¿Quiso poner { $meant }?
gap-is = Es { $width }
