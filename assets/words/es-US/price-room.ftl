### The Price room: days, crew, money, tasks, materials.

price-tax-remark = Las reglas del impuesto de venta cambian de un estado a otro. Pregunte a su contador.

price-heading = { $option }: { $total }
price-days-heading = Días: { $crew } en la obra, { $calendar } de principio a fin
price-crew-heading = Cuarto y cuadrilla
price-tasks-heading = Tareas: { $hours }
price-materials-heading = Materiales
price-materials-not-bought = no se compra
price-spread-heading = Rango del costo
price-payers-heading = Quién paga
price-rates-heading = Cómo se cobra
price-unused-rates-heading = Tarifas sin usar

## The build-up

price-total = Total
price-total-range = rango del 80%: { $low } a { $high }
price-deposit = Anticipo
price-deposit-share = { $share } del total, antes de empezar
price-profit-inside = La ganancia de la mano de obra está dentro de su tarifa por hora; el recargo de arriba es solo sobre lo que compra y el equipo.
price-none-heading = Sin precio
price-made-of = { $basis }: { $amount }
price-made-of-source = Los tiempos y los tamaños se pueden cambiar en Tareas, Materiales y Cómo se cobra.
price-made-of-hours = { $hours } h × { $rate } = { $amount }
price-made-of-packs = { $pieces } × { $price } = { $amount }
price-assumes-access =
    { $access ->
        [ladder] Se supone: trabajo desde una escalera, por un techo inclinado o una pared alta. Ponga otra cosa en Acceso si no es así.
        [scaffold] Se supone: trabajo desde un andamio, porque una pared es más alta de lo que conviene con escalera. Ponga otra cosa en Acceso si no es así.
       *[steps] Se supone: trabajo desde un banco con escalones. Ponga otra cosa en Acceso si el cuarto es más alto.
    }
price-assumes-joints = No incluye { $run } de juntas en extremos, ingletes y bordes, donde no se midió nada.
price-assumes-windows = Se supone: { $count } ventanas y puertas que cubrir; no hay ninguna dibujada.
price-assumes-lead = Se supone: pintura con plomo, con el trabajo que eso pide, porque no se sabe en qué año se construyó la casa. Ponga el año en Medir.
price-assumes-fixtures = Se supone: { $count } lámparas y rejillas que bajar o cubrir.
price-painting =
    { $way ->
        [sprayed_quicker] El precio es con rociadora y repaso con brocha, que aquí toma menos horas que brocha y rodillo.
        [brushed_quicker] El precio es con brocha y rodillo, que aquí toma menos horas que cubrir todo para rociar.
        [joints_few] El precio es pintando solo las juntas selladas, porque son pocas. El retoque se puede notar junto a la pintura vieja. Para pintar todo, elija otra forma de pintar.
        [joints] El precio es pintando solo las juntas selladas. El retoque se puede notar junto a la pintura vieja.
        [sprayed] El precio es con rociadora y repaso con brocha.
       *[brushed] El precio es con brocha y rodillo: sin rociadora y sin plástico en las paredes.
    }
price-overtime = Algunos días pasan de { $day }; el pago de horas extra no está en el precio.
price-starts =
    { $why ->
        [lead] Empieza el { $date }: { $days } días de trabajo de espera después de la visita, o el primer día de trabajo que siga.
        [order] Empieza el { $date }: primero se piden las tablas, { $days } días de trabajo después de la visita, o el primer día de trabajo que siga.
        [drying] Empieza el { $date }: primero se secan las tablas mojadas. Mientras no se encuentre la filtración, ese día es un cálculo al tanteo.
        [other_season] Empieza el { $date }: el otro extremo del año, para medir otra vez.
       *[season] Empieza el { $date }: el día planeado para sellar.
    }
price-moved-by = Lo que más lo mueve: { $drivers }.
price-margin = Un recargo de { $markup } sobre el costo es un margen de { $margin } del precio antes de impuesto.

price-spread = La mano de obra y los materiales deben costar cerca de { $mean }. En { $trials } trabajos simulados, el costo quedó en menos de { $half } la mitad de las veces, en menos de { $eight } en 8 de 10 y en menos de { $nine } en 9 de 10.
price-spread-common = La mitad de la variación del tiempo de cada tarea viene de la cuadrilla y del cuarto, y es igual para todas. Los tiempos que nadie ha medido pueden estar mal todos juntos hasta en una cuarta parte (supuesto); para afinarlos, tome el tiempo de una sección, escriba sus propios minutos o aprenda de trabajos terminados.
price-drivers = Lo que mueve el costo: cuánto sube cuando cada cosa por sí sola pasa de un buen día a uno malo, del percentil 10 al 90.

## Who pays

price-against = { $chance }: no se recomienda aquí. Mejor: { $best }
price-payers-open = Es probable que las tablas se instalaran demasiado húmedas, así que quien las vendió o las instaló puede deber una parte. Mientras no indique quién paga, la carta y la página del dueño no lo dicen, y la propuesta espera.
price-homeowner-pays = Paga el dueño
price-courtesy = La carta dice que usted cubre { $amount } por cortesía.
price-courtesy-result =
    { $result ->
        [loss] Entonces usted cobra { $collected } antes de impuesto por un trabajo que le cuesta { $cost } con gastos generales: pierde { $amount } en este trabajo.
       *[gain] Entonces usted cobra { $collected } antes de impuesto por un trabajo que le cuesta { $cost } con gastos generales: le quedan { $amount }.
    }
price-split-column-line = concepto
price-split-column-contractor = contratista
price-split-column-supplier = proveedor
price-split-share =
    { $payer ->
        [contractor] Parte del contratista: { price-line }
       *[supplier] Parte del proveedor: { price-line }
    }
price-split-remove = Quitar la división: { price-line }
price-split-add = Dividir un concepto de otra forma

## The days

price-no-schedule = Sin cuadrilla y horario no hay calendario.
price-day = { $date }, { $from } a { $to }, { $people ->
    [one] 1 persona
   *[other] { $people } personas
}
price-day-standby = { $does }; { $standby } de eso es tiempo de secado
price-day-coat =
    { $coat ->
        [1] primera mano
        [2] segunda mano
        [3] tercera mano
       *[other] mano { $coat }
    }
price-days-total = { $hours } pagadas, con viaje, preparación y limpieza: { $people } días-persona. De los planes que probamos, este es el que menos cuesta; un viaje más tiene que ahorrar más de una hora de trabajo.
price-days-legend = Lleno: la cuadrilla trabaja. Solo contorno: algo se seca o cura.
price-room-out =
    { $days ->
        [0] El cuarto se sigue usando.
        [one] El cuarto no se puede usar 1 día.
       *[other] El cuarto no se puede usar { $days } días.
    }
price-bar-coats =
    { $coats ->
        [0] Sin pintura
        [one] Pintura, 1 mano
       *[other] Pintura, { $coats } manos
    }
# Only on waits of several days.
price-bar-wait = { $days } días
price-bar-days =
    { $span ->
        [one_day] Día { $from }
       *[days] Del día { $from } al { $to }
    }
price-bar-days-waiting =
    { $span ->
        [one_day] Espera el día { $from }
       *[days] Espera del día { $from } al { $to }
    }

## The tasks

price-tasks-column-task = tarea
price-tasks-column-batches = cuánto
price-tasks-column-minutes = min c/u
    .hint = Minutos de una persona, en promedio. Escriba 35, 35 min o 0.6 h.
price-tasks-column-hours = horas
price-task-minutes = Minutos: { $task }
price-tasks-remark = Ponga el cursor sobre una tarea para ver qué es un lote y de dónde sale su tiempo. Vacíe un campo para usar el tiempo del catálogo.
price-task-batch =
    { $per ->
        [visit] Un lote es una visita.
        [section] { $sections ->
            [one] Un lote es una sección.
           *[other] Un lote son { $sections } secciones.
        }
        [joint_run] Un lote son { $run } de junta.
        [bead_run] Un lote son { $run } de junta.
        [backed_run] Un lote son { $run } de junta con ancho para respaldo.
        [painted_area] Un lote son { $area } por pintar.
        [coated_area] Un lote es una mano en { $area }.
        [coated_grooves] Un lote es una mano en { $run } de ranura.
        [angled_end] Un lote es una punta de tabla cortada en ángulo.
        [boarded_area] Un lote son { $area } de tablas.
        [board] Un lote es una tabla.
        [opening] Un lote es una ventana, una puerta u otro vano en las tablas.
        [window] Un lote es una ventana o una puerta.
        [fixture] Un lote es una lámpara o una rejilla.
        [coat] Un lote es una mano.
        [day] Un lote es un día en la obra.
        [person_day] Un lote es una persona por un día en la obra.
        [evening] Un lote es una tarde.
        [standby] Un lote es una hora.
        [trim_run] Un lote son { $run } de moldura.
        [board_run] Un lote son { $run } de tabla.
       *[outline_run] Un lote son { $run } de borde libre alrededor de las superficies.
    }
price-task-done = { $task }: { $section }, medida con reloj y terminada
price-task-and-besides = { $quantity } + { $minutes } min
# What there is of a task: 7.5 × 100 ft of joint; or a number of things: 88 boards.
price-task-quantity = { $batches } × { $amount } { $unit }
price-task-count = { $count } { $unit }
price-task-fixed = Más { $minutes } min, sin importar la cantidad.
price-task-also = Más { $rate }, { $batches } veces: { $total } min.
price-timed-none = ninguna
price-timed-work = { $task }: la sección medida tomó { $taken } y ya está hecha. { $charged ->
        [yes] Usted la cobra.
       *[no] No está en el precio.
    } Falta: { $all }, rango del 80% de { $low } a { $high }.

## The materials

price-materials-column-what = material
price-materials-column-needed = se necesita
price-materials-column-on-hand = hay
    .hint = En la camioneta o sobrante de otro trabajo. No se compra, pero se gasta, así que el cliente lo paga.
price-materials-column-buy = comprar
price-materials-column-each = c/u
price-materials-column-amount = importe
price-own-price = Precio: { $material }
price-on-hand = Hay: { $material }
price-materials-remark = Vacíe un precio para usar el del catálogo.
price-cutting = Lista de cortes
price-cutting-column-boards = tablas
price-cutting-column-stock = largo
price-cutting-column-pieces = cortar en
price-cutting-column-offcut = sobrante
price-cutting-piece = { $count } × { $length }
price-cutting-waste = { $waste } del largo que compra termina como desperdicio: despunte, cortes de sierra, defectos y sobrantes. Ninguna lista de cortes puede salir más de { $cheaper } más barata.
