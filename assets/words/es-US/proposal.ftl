### The proposal: terms a contractor signs. Laws are told in general terms, each to be checked where the job is.

proposal-class-or-better = Usamos sellador de la clase indicada, o mejor.
proposal-counted = { $count ->
    [one] 1 de estas juntas no se midió; cuenta como abierta porque la mayoría de las medidas lo está.
   *[other] { $count } de estas juntas no se midieron; cuentan como abiertas porque la mayoría de las medidas lo está.
}
proposal-excluded = { $what ->
    [hidden] Reparar pudrición, aislante mojado u otro daño que solo se ve cuando abrimos las juntas
    [trades] Trabajo en el techo de afuera, plomería, cables, estructura o calefacción, ni encontrar o arreglar una filtración
    [testing] Pruebas de plomo, asbesto, PCB o moho, o quitarlos
    [permits] Permisos y cuotas, a menos que las reglas locales nos los asignen a nosotros
   *[furniture] Sacar los muebles del cuarto y regresarlos
}
proposal-excluded-narrow = Juntas de menos de { $narrowest } el día que sellemos: ahí el sellador no tiene de dónde agarrarse, así que las dejamos abiertas
proposal-warranted-beads =
    { $years ->
        [one] Durante 1 año después de terminar, volvemos y lo arreglamos sin cobrar si se abre más de { $share } del largo que sellamos, o si una junta que sellamos se abre más de { $widest }.
       *[other] Durante { $years } años después de terminar, volvemos y lo arreglamos sin cobrar si se abre más de { $share } del largo que sellamos, o si una junta que sellamos se abre más de { $widest }.
    }
proposal-warranted-work =
    { $years ->
        [one] Durante 1 año después de terminar, volvemos y lo arreglamos sin cobrar si algo que pusimos o pintamos se suelta, se raja o se pela.
       *[other] Durante { $years } años después de terminar, volvemos y lo arreglamos sin cobrar si algo que pusimos o pintamos se suelta, se raja o se pela.
    }
proposal-come-back = { $band ->
    [under] Calculamos en menos de { $chance } la probabilidad de que haya que usar esta garantía.
    [over] Calculamos en más de { $chance } la probabilidad de que haya que usar esta garantía.
   *[plain] Calculamos en cerca de { $chance } la probabilidad de que haya que usar esta garantía.
}
proposal-no-warranty = Esta propuesta no da garantía por escrito. La ley estatal todavía puede darle derechos.
proposal-against-not-warranted = No recomendamos esta reparación, así que no podemos garantizar que las juntas sigan cerradas.
proposal-hairlines = Aberturas y grietas en la pintura de menos de { $seen }
proposal-not-warranted = { $what ->
    [water] Daños por filtraciones, inundaciones o tablas que se mojen después del trabajo
    [air] Aberturas que salen mientras el cuarto se mantiene a menos de 35% o a más de 55% de humedad, más o menos
    [house] Movimiento de la estructura o de la casa
   *[others] Juntas y superficies que no se nombran arriba, y trabajo que otros hagan sobre el nuestro
}
proposal-balance = Usted paga { $amount } al terminar el trabajo.
proposal-due = Usted paga { $amount } al terminar el trabajo.
proposal-supplier = Le pedimos { $amount } al proveedor. Todavía no ha aceptado. Usted no debe más que su parte de arriba, a menos que lo acepte por escrito.

proposal-notice-name = { $notice ->
    [lead] Pintura con plomo
    [cancel] Derecho a cancelar
    [contract] Reglas de contratos
   *[liens] Gravámenes (liens)
}
proposal-notice = { $notice ->
    [lead] En una casa construida antes de 1978, el trabajo pagado que toca más de { $units ->
        [inches] 6 pies²
       *[millimeters] 0.56 m²
    } de pintura en un cuarto por lo general lo tiene que hacer una empresa certificada por la EPA, y a usted se le da el folleto “Renovate Right” (Remodelar correctamente) no más de 60 días antes de empezar el trabajo (40 CFR 745, subparte E, 2008). Los programas estatales pueden pedir más. Revise las reglas locales.
    [cancel] Si firma en su casa, por lo general puede cancelar hasta la medianoche del tercer día hábil después de firmar; los sábados cuentan, los domingos y los días feriados federales no (16 CFR 429, con las reformas de 2015; ventas de $25 o más). Entonces se le dan dos formularios de cancelación con fecha junto con esta propuesta. Su estado puede darle más tiempo. Revise las reglas locales.
    [contract] Muchos estados piden un contrato por escrito con número de licencia o de registro, y limitan el anticipo. Revise las reglas locales.
   *[liens] En muchos estados, los trabajadores y proveedores a quienes no se les paga pueden poner un gravamen (lien) sobre su casa. Pida una liberación de gravamen con cada pago. Revise las reglas locales.
}

## Headings and labels of the template

paper-proposal-number = No.
paper-proposal-date = Fecha
paper-proposal-valid-until = Válida hasta
paper-proposal-license = No. de licencia
paper-proposal-insurance = Seguro
paper-proposal-at = Dónde
paper-proposal-for = Para
paper-proposal-scope = Lo que vamos a hacer
paper-proposal-where = dónde
paper-proposal-excluded = No incluido
paper-proposal-warranted = Lo que garantizamos
paper-proposal-not-warranted = Lo que la garantía no cubre
paper-proposal-price = Precio
paper-proposal-payment = Pago
paper-proposal-changes = Si encontramos daños o agua, o si usted quiere cambiar algo, paramos, le decimos el precio y los días de más, y seguimos cuando los dos hayamos firmado el cambio.
paper-proposal-notices = Avisos que por lo general aplican
paper-proposal-notices-note = Información general, no asesoría legal.
paper-proposal-acceptance = Aceptación
paper-proposal-accept = Acepto esta propuesta, todas sus páginas: el trabajo, el precio y las condiciones de arriba.
paper-proposal-pamphlet = Recibí el folleto “Renovate Right” (Remodelar correctamente) antes de que empezara el trabajo. Iniciales del dueño y fecha:
paper-proposal-no-work = La opción elegida no lleva trabajo, así que no hay nada que proponer.
paper-proposal-warning = Lea esto primero
proposal-come-back-paint = Ahí no se cuentan las grietas finas en la pintura sobre un sellador que aguanta: la garantía no las cubre. Con ellas es de { chance-percent }, como en la carta.
proposal-water-first = { $count ->
    [one] Entró agua en la sección { $sections } y puede que siga entrando. Hay que encontrar y reparar la fuga, y dejar secar las tablas, antes de empezar este trabajo. Eso no está en este precio.
   *[other] Entró agua en las secciones { $sections } y puede que siga entrando. Hay que encontrar y reparar la fuga, y dejar secar las tablas, antes de empezar este trabajo. Eso no está en este precio.
}
proposal-not-warranted-air = Aberturas que aparecen cuando la humedad del cuarto baja de { $low } o pasa de { $high }, más o menos
