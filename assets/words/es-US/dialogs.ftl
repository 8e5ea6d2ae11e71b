### Questions, messages and what the window tells.

cancel = Cancelar
dismiss = Cerrar

lost-title = Se encontró trabajo sin guardar
lost-text = La última vez Gapwright no se cerró bien. Lo que usted escribió todavía está aquí:
lost-recover = Recuperar
lost-holds = { $surfaces ->
    [one] 1 superficie
   *[other] { $surfaces } superficies
}, { $gaps ->
    [one] 1 abertura
   *[other] { $gaps } aberturas
}
lost-holds-install = { $readings ->
    [one] Próxima instalación, 1 tabla medida
   *[other] Próxima instalación, { $readings } tablas medidas
}
lost-delete = Borrar…
lost-delete-now = Borrar para siempre
lost-later = Preguntar la próxima vez

changed-title = El archivo cambió
changed-text = Otra persona cambió “{ $path }” desde que usted lo abrió aquí.
changed-overwrite = Guardar encima
changed-open-theirs = Abrir el de la otra persona

unsaved-title = ¿Guardar los cambios?
unsaved-text = Este trabajo tiene cambios sin guardar.
unsaved-discard = No guardar

file-partly-read = Partes de “{ $path }” no se pudieron leer; están en la lista de Medir. El archivo queda como está: guarde con otro nombre.
file-was-typing = Usted estaba escribiendo “{ $text }” en “{ $field }”. Todavía no está en el trabajo.
file-open-twice = “{ $path }” también está abierto en otra ventana. Queda lo último que se guarde: guarde con otro nombre para conservar los dos.
file-changed = Otra persona cambió “{ $path }” desde que usted lo abrió aquí. Ábralo otra vez para ver su trabajo, o guarde el de usted con otro nombre.
file-saved = Guardado en { $path }
autosave-failed = Ahora no se puede respaldar el trabajo sin guardar. Guárdelo pronto.

copied-lines = { $count ->
    [one] 1 línea copiada
   *[other] { $count } líneas copiadas
}
copied-picture = Imagen copiada, { $width } por { $height } pixeles
copy-no-surface = Todavía no hay superficie que copiar. Agregue una en Medir.

prices-exported = Precios guardados en { $path }
prices-no-place = En esta computadora no hay una carpeta para sus propios precios. Expórtelos a un archivo.
prices-kept = Los trabajos nuevos empiezan con estos precios
prices-from-program = el programa
undo-keep-prices = Guardar precios con el trabajo
photo-save-first = Primero guarde el trabajo: sus fotos se guardan en una carpeta junto a él.
undo-pin-photo = Poner foto
undo-recover = Recuperar trabajo sin guardar

task-read-file = Leyendo { $name }…
task-write-papers = Guardando los papeles…
task-read-jobs = Leyendo los trabajos de { $name }…
papers-written = Los papeles están en { $path }.
