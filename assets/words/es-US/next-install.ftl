### The next install: what to hang boards at, the gate at delivery, the watch over the stack.

next-headline =
    { $verdict ->
        [measure] Mida las tablas antes de colgarlas
        [hang] Cuélguelas: están listas
        [wait] Espere: todavía no están listas
        [change_plan] Cambie el plan: esas tablas no van a aguantar en este cuarto
       *[send_back] Devuélvalas: no van a estar listas en este cuarto
    }
next-verdict =
    { $verdict ->
        [measure] Primero medir
        [hang] Colgar
        [wait] Esperar
        [change_plan] Cambiar el plan
       *[send_back] Devolver
    }

## The window

next-window = Cuélguelas entre { $low } y { $high } de humedad promedio. Apunte a { $best } y deje { $gap } en cada junta.
next-window-gaps = Las tablas más secas necesitan más espacio para hincharse: deje { $low_gap } a { $low } y { $high_gap } a { $high }.
next-window-none = Ninguna humedad llega a { $asked } con estas tablas en este cuarto. Lo mejor es { $best } con { $gap } en cada junta: { $chance }.
next-window-best = A { $best }, la probabilidad de que todas las juntas aguanten es de { $chance }.
next-rule = Ninguna junta debe abrirse más de { $rule } en tres años, y las tablas no deben pandearse.

next-caulk-no = No selle estas juntas: se mueven cerca de { $moves } con los años, y para eso { $sealant } necesita una junta de por lo menos { $needs }. Deje la V abierta como línea de sombra.
next-caulk-yes = El sellador puede seguir estas juntas: se mueven cerca de { $moves } con los años, y { $sealant } necesita { $needs }.
next-caulk-hides = Las juntas abiertas llegan a { $chance } cuando mucho, porque la separación que deja cuenta como parte de la abertura.
next-finished-before = Si se pintan antes de colgarlas, también lengüetas y cantos, no se ve madera cruda cuando una junta se abre, y la pintura no las puede pegar entre sí.
next-finished-after = La pintura que se da después de instalar cruza las juntas. Puede pegar las tablas en grupos, y entonces una sola junta recibe el movimiento de varias. Si puede, pinte antes los cantos y las lengüetas.

next-easier =
    { $change ->
        [width] Tablas con cara de { $width } o menos: { $chance }
        [finish] Tablas con imprimador atrás: { $chance }
        [finish_oil] Pintura de aceite en la cara: { $chance }
       *[fixing] Clavadas de otra forma ({ $name }): { $chance }
    }
next-easier-none = Ninguno de los cambios que probamos ayuda mucho.

## The gate

next-now = Si se cuelgan hoy, la probabilidad de que todas las juntas aguanten es de { $holds }. Usted pidió { $asked }.
next-risks = La probabilidad de que una junta se abra más de { $rule } es de { $opens }. La probabilidad de que las tablas se pandeen es de { $buckles }.
next-leave = Deje { $gap } en cada junta de estas tablas.
next-waiting = Esperar sube la probabilidad a { $chance } cuando mucho.
next-send-back = La probabilidad de que no lleguen a estar listas es de { $chance }.
next-lot = Las tablas tienen { $moisture } en promedio, { $sd } más o menos. Hay tablas sueltas cerca de { $spread } más húmedas o más secas que eso.
next-offset = Casi toda esa duda es el error del propio medidor, igual en todas las lecturas. Medir más tablas no la baja; un segundo medidor o una muestra secada en horno, sí.
next-dry-shell = Lo más probable es que el centro esté más húmedo que la superficie: cerca de { $core } contra { $shell }. Con las agujas a solo { $pins }, la lectura sale demasiado seca. Métalas { $deep }.
next-core = Superficie cerca de { $shell }, centro cerca de { $core }.
next-promise-kept = Se prometió { $most } como máximo. Según estas lecturas, cerca de { $wetter } de las tablas están más húmedas.
next-promise-broken = Se prometió { $most } como máximo. Según estas lecturas, cerca de { $wetter } de las tablas están más húmedas. La probabilidad de que más de 1 tabla de cada 20 se pase es de { $broken }.
next-sampling-first = Mida { $count } tablas: de arriba, de en medio y de abajo de la pila, a 20 pulgadas o más de la punta. Si una cuarta parte de la carga está demasiado húmeda, { $count } tablas no lo detectan { $missed } de las veces.
next-sampling =
    { $count ->
        [one] 1 tabla medida. Si una cuarta parte de la carga está demasiado húmeda, 1 tabla no lo detecta { $missed } de las veces.
       *[other] { $count } tablas medidas. Si una cuarta parte de la carga está demasiado húmeda, { $count } tablas no lo detectan { $missed } de las veces.
    }
next-sampling-plan = Para aceptar o rechazar una carga contando las tablas húmedas, mida { $boards } y acéptela con { $may_fail } húmedas como máximo. Así se rechaza una carga buena (1 tabla húmeda de cada 20) { $turned_away } de las veces y se acepta una mala (1 de cada 4) { $let_in } de las veces.

## The watch

next-ready = Lo más probable es que la pila esté lista hacia el { $likely }, lo más pronto el { $early }. Para estar tan seguro como pidió, espere hasta el { $sure }.
next-ready-even = Hoy la probabilidad ya es de más de la mitad. Para estar tan seguro como pidió, espere hasta el { $sure }.
next-not-ready = Como está ahora, la pila no va a estar lista en { $days } días.
next-late = Eso es después del día en que quiere colgarlas.
next-lever =
    { $lever ->
        [stickers] Con separadores
        [into_room] Con separadores en el cuarto
        [dehumidifier] Con un deshumidificador
       *[heat] Con el cuarto 9 °F (5 °C) más caliente
    }
next-lever-ready =
    { $days ->
        [0] no antes
        [one] seguro el { $date }, 1 día antes
       *[other] seguro el { $date }, { $days } días antes
    }
next-lever-first = seguro el { $date }
next-lever-never = no en { $days } días
next-reading = Mida otra vez el { $date }.
next-known = Hay cifras publicadas para el ritmo de las tablas envueltas y de las pilas sin separadores (Wood Handbook, capítulo 13). Para tablas con separadores en un cuarto no encontramos ninguna por debajo de 20% de humedad. Esos días se calculan de qué tan rápido se mueve la humedad por la madera y sale del cuarto. Decide el medidor, no el calendario.
next-outdoors-unknown = Aquí no se conoce el aire de afuera, así que no podemos decir cómo se secan las tablas en una cochera. Ponga el lugar, o lleve la pila al cuarto.
next-incomplete = Ponga una especie y un lugar para ver qué humedad necesitan estas tablas.

## In the window

next-room = Cuarto
next-room-air = Lugar, calefacción y lecturas
next-boards = Tablas
next-gate = Al recibir
next-watch = La pila
next-record = Registro
next-begin = Revise las tablas antes de colgarlas. Aquí ve qué tan húmedas pueden estar en este cuarto, si lo está una entrega y cuándo estará lista una pila.
next-begin-here = Planear una instalación
next-begin-new = Planear la próxima instalación en este cuarto
    .hint = Crea un trabajo nuevo con el mismo cuarto y las mismas tablas. Antes se le pide guardar este.
next-column-number = #
next-column-board = Tabla
next-column-reading = Lectura, %
next-column-pins = Agujas
next-column-date = Fecha
next-reading-board = Tabla de la lectura { $number }
next-reading-reading = Lectura de la tabla { $number }
next-reading-wood = Temperatura de la madera de la tabla { $number }
next-reading-pins = Profundidad de las agujas en la tabla { $number }
next-reading-date = Fecha de la lectura de tabla { $number }
next-reading-remove = Quitar la lectura de tabla { $number }
next-reading-fresh = Lectura de la tabla siguiente
next-reading-add = Agregar lectura de tabla
next-undo-remove = Quitar lectura de tabla
next-same = Misma temperatura y agujas para todas
    .hint = Copia la temperatura de la madera y la profundidad de las agujas de la primera tabla a todas las de ese día
next-today = Empezar las lecturas de hoy
next-picture = Humedad promedio de la pila: de { $from } a cerca de { $to } el { $date }. La banda la contiene 9 de cada 10 veces; la franja sombreada es el rango para colgar; las líneas punteadas son el centro y la superficie.
next-write = Guardar el registro…
    .hint = Guarda el registro de entrega y una tarjeta de una página para la cuadrilla en PDF, las cifras en JSON y una cita de calendario para la próxima lectura.
next-follow-up = Empezar el trabajo de seguimiento

next-piling =
    { $piling ->
        [stickered] con separadores
        [solid] tabla sobre tabla
       *[wrapped] en su envoltura
    }
next-kept =
    { $kept ->
        [room] el cuarto
       *[garage] una cochera o bodega
    }
next-joints =
    { $joints ->
        [open] abiertas, como líneas de sombra
       *[sealed] selladas
    }
next-finish-order =
    { $order ->
        [before] antes de colgarlas
       *[after] después de colgarlas
    }

## On paper

next-paper-record = Registro de entrega
next-paper-card = Tarjeta de entrega para la cuadrilla
next-paper-delivery = Entrega
next-paper-readings = Lecturas
next-paper-verdict = Decisión
next-paper-supplier = Proveedor
next-paper-delivered = Entregadas
next-paper-promised = Máximo prometido
next-paper-boards = Tablas
next-paper-boards-value = { $count } de { $species }, cara de { $width }, { $thickness } de grueso
next-paper-meter = Medidor puesto en
next-paper-stack = Pila
next-paper-stack-value = { $piling }, en { $kept }
next-paper-measured-by = Midió
next-paper-reading = Lectura
next-paper-wood = Madera
next-paper-blanks = Lecturas: tabla y humedad
next-paper-sign-measured = Midió
next-paper-sign-received = Recibió
next-card-stickers = Ponga las tablas con separadores en el cuarto en cuanto lleguen, uno encima del otro, cada 16 pulgadas.
next-card-where = Mida tablas de arriba, de en medio y de abajo de la pila, a 20 pulgadas o más de la punta.
next-card-pins = Meta las agujas a lo largo de la veta, a un cuarto del grueso. Ponga el medidor en la especie. Anote qué tan caliente está la madera.
next-card-type = Escriba las lecturas en el programa antes de colgar una tabla.
next-card-hang = Deje la separación de arriba en cada junta. No cuelgue tablas que marquen fuera del rango.
next-calendar = Medir las tablas: { $title }

pick-record = Guardar el registro
    .field = Carpeta para el registro
    .button = Guardar

why-next-install = Antes de la próxima instalación
