### The Options room: repairs side by side, the bead of the chosen one.

# Where there is no figure to show.
no-figure = –

options-none = Primero dibuje las tablas. De ahí salen las opciones de reparación.
options-heading = Opciones de reparación
options-group-best = La que conviene
options-group-equal = Igual de buenas
options-group-other = Otras
options-group-against = { $count ->
    [one] 1 que no va a durar o que aquí no se puede hacer
   *[other] { $count } que no van a durar o que aquí no se pueden hacer
}
options-name = { $number }. { $option }
options-price-range = { $low } a { $high }
options-with-callbacks = { $total } con reclamos
options-lasts = { $chance } sin reclamo
options-price-drivers = Lo que más lo mueve, de un buen día a uno malo: { $drivers }.
options-price-driver = { $what } ({ $swing })
options-days =
    { $crew ->
        [0] Ningún día en la obra.
        [one] 1 día en la obra; { $calendar } de principio a fin. { $out ->
            [0] El cuarto se sigue usando.
            [one] El cuarto no se usa 1 día.
           *[other] El cuarto no se usa { $out } días.
        }
       *[other] { $crew } días en la obra; { $calendar } de principio a fin. { $out ->
            [0] El cuarto se sigue usando.
            [one] El cuarto no se usa 1 día.
           *[other] El cuarto no se usa { $out } días.
        }
    }
options-chance-range = { $chance } ({ $low } a { $high })
options-paint-range = Si la pintura sobre el cordón no se agrieta, la probabilidad de un reclamo es de { $without }. Nadie ha publicado cuánto se estira la pintura de pared en un invierno seco. En el laboratorio, la pintura acrílica aguanta más de 50% en aire húmedo y menos en aire seco, así que nadie le puede afinar esta cifra.
options-afterward = Cómo queda: { $look }. Durante el trabajo: { $disruption }.
options-chance = Probabilidad de un reclamo
options-total = Total con reclamos

options-plot = Probabilidad de un reclamo según el precio: { $options }
options-plot-title = probabilidad de un reclamo, según el precio
options-plot-point = { $number }. { $option }: { chance-percent }
options-plot-legend = Los números son los de la lista de arriba. La línea une las opciones que ninguna otra supera a la vez en precio y en probabilidad. La del círculo va primero: es la que menos cuesta con los reclamos incluidos, o la que menos molesta de las que cuestan casi lo mismo.

options-cautions = Precauciones
options-caution = { $title }. { $text }
options-caution-source = { $source } ({ label-source-kind })

## The bead

# What a screen reader says of a picture.
options-still = Una junta en { $month }: { $says }
options-bead-still = { $option }, en { $month }: { $says }
options-beads = Todos los cordones en enero y agosto
sealing-heading = Sellado
sealing-best = Lo mejor es sellar { answer-best-weeks }: así { $holds } del largo de las juntas se mantiene dentro de la clase del sellador.
sealing-planned = Las cantidades y los precios son para sellar el { $day }.
sealing-typical = Una junta típica se abre entonces { $opens } y se cierra { $closes }.
sealing-never = { $run } de junta son demasiado angostos para sellarlos en cualquier semana.
sealing-joint = La junta { $joint } mide { $gap } cuando se sella. Desde ahí se abre { $opens } y se cierra { $closes }{ $slid ->
    [yes] , y sus lados se deslizan { $slides }.
   *[no] .
}
sealing-joint-takes = El cordón que la cruza mide unos { $bead } de ancho, así que la clase más baja que lo aguanta es: { $sealant }.
sealing-joint-none = Ningún sellador del catálogo lo aguanta en un cordón puesto así.
sealing-row = Sección { $section }: lo más probable es que no se rompa ninguna de { $joints } juntas selladas, aun cuando la fila de tablas se haya movido todo lo que se va a mover.
sealing-row-widest =
    { $torn ->
        [one] Sección { $section }: cerca de 1 de { $joints } juntas selladas se rompe cuando la fila de tablas se ha movido todo lo que se va a mover. La más ancha se abre hasta { $widest }.
       *[other] Sección { $section }: cerca de { $torn } de { $joints } juntas selladas se rompen cuando la fila de tablas se ha movido todo lo que se va a mover. La más ancha se abre hasta { $widest }.
    }
bead-finding-tape = La ranura mide { $value } de ancho. La cinta necesita { $least } para quedar plana, así que detrás de este cordón no va nada.
bead-finding-rod = La ranura mide { $value } de ancho. La varilla de respaldo más delgada necesita { $least }.
bead-finding-rod-depth = Un cordón sobre varilla de respaldo tiene que entrar { $least } en la ranura. Este entra { $value }.
bead-finding-sinks = Este cordón es demasiado delgado: cuando cura, quedan { $value } en el centro.
bead-finding-feather = Alisado tan hundido, el cordón queda sin grueso en los bordes y se despega.
bead-finding-nozzle = El cordón entra { $value } en la ranura. En una ranura tan angosta, la boquilla solo mete el sellador { $most }.
bead-finding-finger = El cordón queda { $value } por debajo de las tablas. La punta del dedo solo llega a { $most } en esta V: use una espátula angosta de sellador.
bead-finding-hides-v = Llena hasta arriba, la V no se ve.
bead-shape-v = { $level ->
    [full] Llene la V al ras de la cara de las tablas
   *[below] Llene la V hasta que la cara del sellador quede { $below } por debajo de la cara de las tablas ({ $fill } de su profundidad)
}, alisado { $tooled ->
    [hollow] hundido
   *[flush] plano
}{ $into ->
    [tongue] , hasta la lengüeta.
    [slot] , { $depth } dentro de la ranura.
   *[v] {""}. Deje vacía la ranura de atrás.
}
bead-shape-square = Ponga el cordón de { $depth } de grueso, alisado { $tooled ->
    [hollow] hundido
   *[flush] plano
}.
bead-design-heading = Diseñar el cordón
bead-design-joints = { $kind ->
    [trim] Junto a la moldura
   *[boards] Entre tablas
}: { $run }, aberturas de cerca de { $gap }
bead-design-backed = Ponga respaldo detrás.
bead-design-lasts = Si se sella { answer-best-weeks }, debe durar en { $lasts } del largo, y la pintura de encima en { $paint }.
bead-design-usual = Metido a presión y limpiado con el dedo hoy, el mismo sellador debe durar en { $lasts }.
bead-design-takes = Lleva { $sealant } de sellador ({ $cost }) y { $minutes } de una persona; el cordón de siempre lleva { $usual }.
bead-design-warning = No meta el sellador a presión ni lo limpie con el dedo: ese cordón debe durar en { $usual } del largo; este, en { $best }.
bead-design-take = Usar este cordón
    .hint = Pone esta forma en el plan. Se puede deshacer.
bead-design-column-sealant = sellador
bead-design-column-lasts = dura en
    .hint = Parte del largo de las juntas en que debe durar el mejor cordón de este sellador
bead-design-column-usual = el de siempre
    .hint = Lo mismo, metido a presión y limpiado con el dedo el día de la visita
bead-design-column-cost = costo
    .hint = Sellador para el mejor cordón, con desperdicio
bead-design-column-minutes = minutos
    .hint = Una persona: poner el cordón, alisarlo y ponerle respaldo, y un segundo donde se hunde
bead-design-cost = { $cost }
bead-design-note = Se probaron cordones que dejan abierta por lo menos una quinta parte de la V y que no entran más de lo que la boquilla mete el sellador, en cada semana del año.
sealing-guide = Las guías de selladores son para juntas de { $least } o más, con varilla de respaldo detrás. Las juntas entre tablas interiores son más angostas, y el cordón también pega en la lengüeta de atrás. Tome estos porcentajes como guía, no como promesa.
