### The Options room: repairs side by side, the bead of the chosen one.

# Where there is no figure to show.
no-figure = –

options-none = Primero dibuje las tablas. De ahí salen las opciones de reparación.
options-heading = Opciones de reparación
options-column-option = opción
options-column-price = precio
    .hint = Con su rango del 80%. Ponga el cursor sobre un precio para ver qué lo mueve más.
options-column-days = días
    .hint = Días en la obra / días de principio a fin / días sin el cuarto
options-column-callback = reclamo
    .hint = Probabilidad de un reclamo durante la garantía
options-column-total = con reclamos
    .hint = El precio y los reclamos que se esperan durante la garantía, a valor presente. El más bajo está marcado.
options-name = { $number }. { $option }
options-not-here = aquí no es una opción
options-price = { $total } ({ $low } a { $high })
options-price-drivers = Lo que más lo mueve, de un buen día a uno malo: { $drivers }.
options-price-driver = { $what } ({ $swing })
options-chance-range = { $chance } ({ $low } a { $high })
options-days = { $crew } / { $calendar } / { $out }
options-days-legend = Días: en la obra / de principio a fin / sin el cuarto.
options-no-callback = No se repara nada, así que nada puede fallar otra vez
options-afterward = Cómo queda: { $look }. Durante el trabajo: { $disruption }.
options-chance = Probabilidad de un reclamo
options-total = Total con reclamos

options-plot = Probabilidad de un reclamo según el precio: { $options }
options-plot-title = probabilidad de un reclamo, según el precio
options-plot-point = { $number }. { $option }: { chance-percent }
options-plot-legend = Los números son los de la lista de arriba. La línea une las opciones que ninguna otra supera a la vez en precio y en probabilidad. La del círculo es la que menos cuesta con los reclamos incluidos.

options-cautions = Precauciones
options-caution = { $title }. { $text }
options-caution-source = { $source } ({ label-source-kind })

## The bead

# What a screen reader says of a picture.
options-still = Una junta en { $month }: { $says }
sealing-heading = Sellado
sealing-best = Lo mejor es sellar { answer-best-weeks }: así { $holds } del largo de las juntas se mantiene dentro de la clase del sellador.
sealing-planned = Las cantidades y los precios son para sellar el { $day }.
sealing-typical = Un cordón típico se estira entonces { $stretch } y se comprime { $squeeze }.
sealing-never = { $run } de junta son demasiado angostos para sellarlos en cualquier semana.
sealing-joint = La junta { $joint } se estira { $stretch } y se comprime { $squeeze }, y sus lados se deslizan { $shear }. La clase más baja que lo aguanta: { $sealant }.
sealing-joint-none = La junta { $joint } se estira { $stretch } y se comprime { $squeeze }, y sus lados se deslizan { $shear }. Ningún sellador del catálogo lo aguanta.
sealing-row =
    { $torn ->
        [one] Sección { $section }: cerca de 1 de { $joints } juntas selladas se rompe cuando la fila de tablas se ha movido todo lo que se va a mover.
       *[other] Sección { $section }: cerca de { $torn } de { $joints } juntas selladas se rompen cuando la fila de tablas se ha movido todo lo que se va a mover.
    }
sealing-row-widest =
    { $torn ->
        [one] Sección { $section }: cerca de 1 de { $joints } juntas selladas se rompe cuando la fila de tablas se ha movido todo lo que se va a mover. La más ancha se abre hasta { $widest }.
       *[other] Sección { $section }: cerca de { $torn } de { $joints } juntas selladas se rompen cuando la fila de tablas se ha movido todo lo que se va a mover. La más ancha se abre hasta { $widest }.
    }
sealing-guide = Las guías de selladores son para juntas de { $least } o más, con varilla de respaldo detrás. Las juntas entre tablas interiores son más angostas, y el cordón también pega en la lengüeta de atrás. Tome estos porcentajes como guía, no como promesa.
