### The Follow-up room: what the work took, and later visits.

work-heading = Trabajo terminado
work-hours = Horas
work-pieces = Piezas usadas
work-remark = Las horas de los trabajos terminados se vuelven sus propios tiempos: en Catálogo, elija “Aprender de trabajos terminados…” y la carpeta donde están.
work-column-task = tarea
work-column-estimated-hours = horas estimadas
work-column-actual-hours = horas reales
work-column-material = material
work-column-estimated-pieces = estimado
work-column-used-pieces = usado
work-hours-of = Horas reales: { $task }
work-pieces-of = Piezas usadas: { $material }
work-over =
    { $sign ->
        [more] +{ $share }
       *[less] -{ $share }
    }

visits-heading = Visitas posteriores
visits-remark = Mida otra vez algunas de las mismas juntas, antes o después del trabajo. El pronóstico aparece junto a cada una, y las lecturas de antes del trabajo actualizan la probabilidad de las causas.
visit-add = Agregar visita
visit-on = Visita del
visit-day = Fecha de la visita { $number }
visit-remove = Quitar la visita { $number }
undo-remove-visit = Quitar visita
visit-measure-again = Medir otra vez
visit-joint-again = Junta que se mide otra vez
visit-measure-all = Todas
    .hint = Todas las juntas de la primera visita
undo-measure-all-again = Medir otra vez todas las juntas
visit-column-joint = junta
visit-column-gap = abertura
visit-column-opening = se abrió
visit-column-forecast = pronóstico
visit-column-chance = prob. de que se abra
visit-gap = Abertura posterior: { $surface } { $joint }
visit-forecast = { $expected } ({ $low } a { $high })
    .hint = Nueve de cada diez lecturas deben caer en este rango
visit-inside = en rango
visit-outside = fuera de rango
undo-promise = Guardar lo que dijeron los papeles
visits-told = Comparado con los papeles del { $on }.
visits-not-told = Comparado con lo que la primera visita por sí sola habría pronosticado: no se emitieron papeles antes de estas visitas.
