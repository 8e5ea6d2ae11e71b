### The next install: what to hang boards at, the gate at delivery, the watch over the stack.

next-headline-measure = Mida las tablas antes de instalarlas
next-headline-meter-more = Mida más tablas antes de decidir
next-headline-check-meter = Revise el medidor antes de instalarlas: estas lecturas no cuadran con las anteriores
next-headline-hang =
    { $against ->
        [short] { $kind ->
            [tight] Instálelas, bien juntas: { $chance } es casi lo mejor que da este plan
           *[gap] Instálelas y deje { $gap } en cada junta: { $chance } es casi lo mejor que da este plan
        }
        [near] { $kind ->
            [tight] Instálelas, bien juntas: { $chance } está cerca del { $asked } que pidió
           *[gap] Instálelas y deje { $gap } en cada junta: { $chance } está cerca del { $asked } que pidió
        }
       *[told] { $kind ->
            [tight] Instálelas, bien juntas: están listas
           *[gap] Instálelas y deje { $gap } en cada junta: están listas
        }
    }
next-headline-wait =
    { $now ->
        [dry] Espere hasta el { $date }: ahora están demasiado secas
       *[wet] Espere hasta el { $date }: ahora están demasiado húmedas
    }
next-headline-first =
    { $lever ->
        [stickers] Póngalas ya con separadores: están listas el { $date }
        [into_room] Póngalas ya con separadores en el cuarto: están listas el { $date }
        [dehumidifier] Ponga un deshumidificador junto a la pila: están listas el { $date }
       *[heat] { $units ->
            [millimeters] Mantenga el cuarto de la pila 5 °C más caliente: están listas el { $date }
           *[inches] Mantenga el cuarto de la pila 9 °F más caliente: están listas el { $date }
        }
    }
next-headline-sort = Sepárelas: unas están secas y otras húmedas
next-headline-promise = Devuélvalas: están más húmedas que el { $most } prometido
next-headline-send-back = Devuélvalas: no van a estar listas en este cuarto
next-headline-change-plan =
    { $joints ->
        [sealed] Cambie el plan: a lo sumo hay una probabilidad de { $best } de que ninguna junta se abra { $rule } más de como usted la dejó
       *[open] Cambie el plan: a lo sumo hay una probabilidad de { $best } de que todas las juntas queden en { $rule } o menos
    }
next-headline-caulk-fails = Cambie el plan: el sellador no puede seguir estas juntas
next-verdict =
    { $verdict ->
        [measure] Primero medir
        [meter_more] Medir más
        [hang] Instalar
        [wait] Esperar
        [sort] Separar
        [change_plan] Cambiar el plan
       *[send_back] Devolver
    }
next-chance-under = menos de { $chance }
next-chance-over = más de { $chance }

## What boards for this room should be

next-window =
    { $kind ->
        [tight] Las tablas para este cuarto deben promediar de { $low } a { $high } cuando se instalan. Apunte a { $best }, bien juntas.
       *[gap] Las tablas para este cuarto deben promediar de { $low } a { $high } cuando se instalan. Apunte a { $best }, con { $gap } en cada junta.
    }
next-window-none =
    { $kind ->
        [tight] Con ninguna humedad llegan estas tablas a una probabilidad de { $asked }. Lo mejor es { $best } de humedad, bien juntas: la probabilidad es de { $chance }.
       *[gap] Con ninguna humedad llegan estas tablas a una probabilidad de { $asked }. Lo mejor es { $best } de humedad, con { $gap } en cada junta: la probabilidad es de { $chance }.
    }
next-rule =
    { $joints ->
        [sealed] En tres años ninguna junta debe abrirse más de { $rule } sobre la separación que usted dejó, y las tablas no deben pandearse.
       *[open] Ninguna junta debe medir más de { $rule } en tres años, contando la separación que usted deja. Y las tablas no deben pandearse.
    }

next-caulk =
    { $can ->
        [yes] Estas juntas se pueden sellar. La mayoría se mueve cerca de { $usual } en total, de la temporada seca a la húmeda, y 19 de cada 20 se { $way ->
            [closes] cierran
           *[opens] abren
        } menos de { $moves }. { $kind ->
            [tight] Con las tablas bien juntas,
           *[gap] En una junta de { $gap },
        } { $sealant } aguanta { $takes } de eso en su peor punto, según la forma del cordón.
       *[no] { $open ->
            [yes] No selle estas juntas: deje la V abierta como línea de sombra.
           *[no] No selle estas juntas.
        } La mayoría se mueve cerca de { $usual } en total, de la temporada seca a la húmeda, pero instaladas con cerca de { $hung } de humedad, 1 de cada 20 se { $way ->
            [closes] cerraría
           *[opens] abriría
        } { $moves } o más. { $kind ->
            [tight] Con las tablas bien juntas,
           *[gap] En una junta de { $gap },
        } { $sealant } aguanta solo { $takes } de eso en su peor punto, según la forma del cordón.
    }
next-paint-first = Pinte lengüetas y cantos antes de instalar las tablas. Así no se ve madera cruda cuando una junta se abre, y la pintura no puede pegar las tablas entre sí.

next-easier =
    { $change ->
        [caulk] sellar las juntas, que entonces pueden abrirse { $length } más de lo que usted deja
        [open] dejar las juntas abiertas, como líneas de sombra
        [gap] dejar { $length } en cada junta
        [rule] aceptar juntas de hasta { $length } de ancho
        [rule_sealed] aceptar juntas que se abran hasta { $length }
        [width] comprar tablas con cara de { $length }
        [finish] dar imprimador atrás a las tablas
        [finish_oil] usar pintura de aceite en la cara
        [humidifier] mantener el cuarto en { $kept } o más en invierno, con un humidificador
        [summer] mantener el cuarto en { $kept } o menos en verano, con aire acondicionado o un deshumidificador
       *[fixing] clavarlas de otra forma: { $name }
    }
next-way =
    { $then ->
        [today] { $change }: la probabilidad es de { $chance }, y se pueden instalar hoy
        [day] { $change }: la probabilidad es de { $chance }, listas el { $date }
        [never] { $change }: la probabilidad es de { $chance }, pero no con estas tablas en { $days } días
       *[unknown] { $change }: la probabilidad es de { $chance }, instaladas con cerca de { $moisture } de humedad
    }
next-easier-none = Ningún cambio de los que probamos basta por sí solo con estas tablas.
next-changes =
    { $kind ->
        [nearest] Ningún cambio de los que probamos basta por sí solo. Lo que más se acerca, cada cosa por sí sola: { $changes }.
       *[reaches] Lo que ayudaría, cada cosa por sí sola: { $changes }.
    }
next-changes-short =
    { $kind ->
        [nearest] Ningún cambio basta por sí solo. Lo que más se acerca: { $change }.
       *[reaches] { $count ->
            [0] Lo que ayudaría: { $change }.
            [one] Lo que ayudaría: { $change }. Abajo hay otra manera.
           *[other] Lo que ayudaría: { $change }. Abajo hay otras { $count } maneras.
        }
    }
next-ways =
    { $kind ->
        [nearest] Lo que más se acerca, cada cosa por sí sola
       *[reaches] Lo que ayudaría, cada cosa por sí sola
    }
next-way-try = Probar
    .hint = Cambia el plan así. Deshacer lo devuelve.
next-way-try-named = Probar: { $way }
## The verdict and its reasons

next-now =
    { $kind ->
        [as_good] Si se instalan hoy, la probabilidad de que todas las juntas aguanten es de { $holds }. Usted pidió { $asked }; no podemos distinguir una de la otra.
        [short] Si se instalan hoy, la probabilidad de que todas las juntas aguanten es de { $holds }. Usted pidió { $asked }; en este cuarto estas tablas llegan a lo sumo a { $most }.
        [near] Si se instalan hoy, la probabilidad de que todas las juntas aguanten es de { $holds }. Usted pidió { $asked }: si puede esperar, llega a eso el { $date }.
        [wait] Si se instalan hoy, la probabilidad de que todas las juntas aguanten es de { $holds }. Usted pidió { $asked }; las instalaríamos desde { $from }.
       *[told] Si se instalan hoy, la probabilidad de que todas las juntas aguanten es de { $holds }. Usted pidió { $asked }.
    }
next-surprise = Estas lecturas promedian { $average }. Por las anteriores esperaríamos de { $low } a { $high }. Revise la especie puesta en el medidor, sus agujas y si son las mismas tablas; luego mida otra vez.
next-risk-opens =
    { $joints ->
        [sealed] Si se instalan hoy, la probabilidad de que una junta se abra { $rule } más de como usted la dejó es de { $chance }.
       *[open] { $kind ->
            [told] Si se instalan hoy, la probabilidad de que una junta se abra más de { $rule } es de { $chance }.
            [tight] Si se instalan hoy bien juntas, la probabilidad de que una junta se abra más de { $rule } es de { $chance }.
           *[gap] Si se instalan hoy con { $gap } en cada junta, la probabilidad de que una junta se abra más de { $rule } es de { $chance }.
        }
    }{ $season ->
        [none] { "" }
       *[told] { " " }Son más anchas hacia { $month }.
    }
next-risk-buckles =
    Si se instalan hoy, la probabilidad de que las tablas se pandeen es de { $chance }.{ $season ->
        [none] { "" }
       *[told] { " " }Se hinchan y se empujan más hacia { $month }.
    }
next-hang-now = Instálelas en los próximos días.
next-hang-then =
    { $range ->
        [at_most] El { $date }, mida la humedad de { $count } tablas. Instálelas si las lecturas, corregidas por la temperatura de la madera, promedian { $high } o menos.
       *[between] El { $date }, mida la humedad de { $count } tablas. Instálelas si las lecturas, corregidas por la temperatura de la madera, promedian de { $low } a { $high }.
    }
next-hang-gap =
    { $kind ->
        [tight] Instálelas bien juntas.
       *[gap] Deje { $gap } en cada junta.
    }
next-hang-gaps = En cada junta deje { $steps }.
next-gap-step =
    { $place ->
        [under] { $kind ->
            [tight] nada si promedian menos de { $high }
           *[gap] { $gap } si promedian menos de { $high }
        }
        [between] { $kind ->
            [tight] nada de { $low } a { $high }
           *[gap] { $gap } de { $low } a { $high }
        }
       *[over] { $kind ->
            [tight] nada (bien juntas) si pasan de { $low }
           *[gap] { $gap } si pasan de { $low }
        }
    }
next-hang-beside =
    { $range ->
        [at_most] Si pasan de { $high }, no las instale todavía: llame con las lecturas.
       *[between] Si pasan de { $high } o bajan de { $low }, no las instale todavía: llame con las lecturas.
    }
next-hang-dry = Están secas para este cuarto: { $mean } ahora, y cerca de { $settled } cuando se asienten. Se van a hinchar, así que no deje menos de esta separación.
next-too-dry = Están demasiado secas: { $mean } en promedio. Si se instalan hoy, se hinchan y se empujan unas a otras. Con separadores en el cuarto toman la humedad que les falta.
next-mixed = Esto no es una sola carga: las tablas promedian { $mean }, pero hay tablas sueltas cerca de { $spread } más húmedas o más secas que eso.
next-sort = Mida todas las tablas. Instale las que marquen { $high } o menos. Ponga las más húmedas con separadores, o devuélvalas.
next-mixed-chance = Si se instalan como están, la probabilidad de que todas las juntas aguanten es de { $holds }. Si espera toda la carga, es de { $waiting } cuando mucho.
next-never = La probabilidad de que no lleguen a estar listas es de { $not }. En { $days } días llegan a { $best } cuando mucho.
next-if-kept = Si las deja como están ({ $stack }), estarían listas el { $date }.
next-at-best = Si se instalan hoy, la probabilidad de que todas las juntas aguanten es de { $holds }. Con este plan es de { $best } cuando mucho, y usted pidió { $asked }.
next-so-few =
    { $count ->
        [one] 1 tabla dice muy poco: a su lado puede haber una húmeda. Mida { $more } más, de arriba, de en medio y de abajo de la pila.
       *[other] { $count } tablas dicen muy poco: a su lado puede haber una húmeda. Mida { $more } más, de arriba, de en medio y de abajo de la pila.
    }
next-read =
    { $kind ->
        [first] { $count ->
            [one] La tabla que midió marca { $average }, corregido por la temperatura de la madera.
           *[other] Las { $count } tablas que midió promedian { $average }, corregido por la temperatura de la madera.
        }
       *[later] { $count ->
            [one] La última tabla que midió marca { $average }, corregido por la temperatura de la madera.
           *[other] Las últimas { $count } tablas que midió promedian { $average }, corregido por la temperatura de la madera.
        }
    }
next-lot = Nuestra mejor estimación para toda la carga ese día es { $moisture }, con { $sd } de más o de menos. Cada tabla puede estar cerca de { $spread } más húmeda o más seca.
next-offset = Casi toda esa duda es el error del propio medidor, igual en todas las lecturas. Medir más tablas no la baja; un segundo medidor o una muestra secada en horno, sí.
next-dry-shell = Lo más probable es que las tablas estén más húmedas por dentro que cerca de la cara: cerca de { $core } contra { $shell }. Con las agujas a solo { $pins }, la lectura sale demasiado seca. Métalas { $deep }.
next-core = Cerca de { $shell } junto a la cara, cerca de { $core } en el centro.
next-promise-open =
    { $share ->
        [none] Se prometió { $most } como máximo. Según estas lecturas, ninguna tabla está más húmeda.
        [all] Se prometió { $most } como máximo. Según estas lecturas, todas las tablas están más húmedas.
       *[some] Se prometió { $most } como máximo. Según estas lecturas, { $wetter } de las tablas están más húmedas. La probabilidad de que sea más de 1 tabla de cada 20 es de { $broken }, y de que sea más de 1 de cada 4, de { $clearly }. { $likely ->
            [no] Eso no demuestra que no se cumplió lo prometido.
           *[yes] Eso casi demuestra que no se cumplió lo prometido: mida más tablas.
        }
    }
next-promise-broken =
    { $share ->
        [all] Se prometió { $most } como máximo, y según estas lecturas todas las tablas están más húmedas.
       *[some] Se prometió { $most } como máximo. Según estas lecturas, { $wetter } de las tablas están más húmedas. La probabilidad de que sea más de 1 tabla de cada 4 es de { $clearly }.
    }
next-sampling-first = Mida { $count } tablas: de arriba, de en medio y de abajo de la pila, a { $end } o más de la punta. Si una cuarta parte de la carga está demasiado húmeda, la probabilidad de que ninguna de las { $count } lo muestre es de { $missed }.
next-sampling =
    { $count ->
        [one] 1 tabla medida. Si una cuarta parte de la carga está demasiado húmeda, la probabilidad de que no se note es de { $missed }.
       *[other] { $count } tablas medidas. Si una cuarta parte de la carga está demasiado húmeda, la probabilidad de que ninguna de las { $count } lo muestre es de { $missed }.
    }
next-sampling-plan = Para acordar con el proveedor una prueba que cuente las tablas húmedas: mida { $boards } y acepte la carga con { $may_fail } húmedas como máximo. Así se rechaza una carga buena (1 tabla húmeda de cada 20) { $turned_away } de las veces y se acepta una mala (1 de cada 4) { $let_in } de las veces.

## The stack

next-ready-sure =
    { $kind ->
        [as_good] Para el { $sure }, la probabilidad de que todas las juntas queden dentro del límite es de { $chance }. Usted pidió { $asked }; no podemos distinguir una de la otra.
        [short] Para el { $sure }, la probabilidad de que todas las juntas queden dentro del límite es de { $chance }. Usted pidió { $asked }; en este cuarto estas tablas llegan a lo sumo a { $most }.
        [near] Para el { $sure }, la probabilidad de que todas las juntas queden dentro del límite es de { $chance }. Usted pidió { $asked }.
       *[told] Para el { $sure }, la probabilidad de que todas las juntas queden dentro del límite es de { $chance }. Usted pidió { $asked }.
    }
next-ready-even = Para el { $even } la probabilidad es de 50%.
next-caulk-fails = El sellador del plan no puede seguir estas juntas.
next-wanted =
    { $can ->
        [yes] ¿Se pueden instalar el { $wanted }? Sí: la probabilidad de que aguanten todas las juntas es de { $chance }.
        [yes_first] ¿Se pueden instalar el { $wanted }? Sí, si hace eso ahora: la probabilidad de que aguanten todas las juntas es de { $chance }.
        [close] ¿Se pueden instalar el { $wanted }? Casi: la probabilidad es de { $chance }, y usted pidió { $asked }. El { $date } es de { $instead }.
        [no] ¿Se pueden instalar el { $wanted }? No: la probabilidad es de { $chance }. El primer día bueno es el { $date }: { $instead }.
        [never] ¿Se pueden instalar el { $wanted }? No: la probabilidad es de { $chance }, y ningún día alcanza en los próximos { $days } días.
        [sort] ¿Se pueden instalar el { $wanted }? No toda la carga: para toda, la probabilidad es de { $chance }.
        [caulk] ¿Se pueden instalar el { $wanted }? No: el sellador no puede seguir estas juntas.
        [send_back] ¿Se pueden instalar el { $wanted }? No: estas tablas se devuelven.
        [past] El { $wanted }, el día que usted quería, ya pasó. El próximo día bueno es el { $date }: { $instead }.
        [past_none] El { $wanted }, el día que usted quería, ya pasó.
        [too_far] ¿Se pueden instalar el { $wanted }? Falta demasiado para saberlo.
       *[measure] ¿Se pueden instalar el { $wanted }? Aún no alcanza para saberlo: mida { $more ->
            [one] 1 tabla más
           *[other] { $more } tablas
        }.
    }
next-in-time = { $lever }: listas a tiempo, el { $date }.
next-not-ready = Como están apiladas ahora, no van a estar listas en { $days } días.
next-lever =
    { $lever ->
        [stickers] Con separadores
        [into_room] Con separadores en el cuarto
        [dehumidifier] Con un deshumidificador junto a la pila
       *[heat] { $units ->
            [millimeters] Con el cuarto 5 °C más caliente
           *[inches] Con el cuarto 9 °F más caliente
        }
    }
next-lever-ready =
    { $days ->
        [0] listas el { $date }, no antes.
        [one] listas 1 día antes, el { $date }.
       *[other] listas { $days } días antes, el { $date }.
    }
next-lever-first = listas el { $date }.
next-lever-never = no en { $days } días
next-reading = Mida otra vez el { $date } y avise las lecturas.
next-known = Hay cifras publicadas para el ritmo de las tablas envueltas y de las pilas sin separadores (Wood Handbook, capítulo 13). Para tablas con separadores en un cuarto no encontramos cifras publicadas por debajo de 20% de humedad. Esos días se calculan de qué tan rápido se mueve la humedad por la madera y sale del cuarto. Decide el medidor, no el calendario.
next-outdoors-unknown = Aquí no se conoce el aire de afuera, así que no podemos decir cómo se secan las tablas en una cochera. Ponga el lugar, o lleve la pila al cuarto.
next-incomplete = Ponga el cuarto, las tablas y 8 lecturas
next-missing = Ponga { $what }
next-missing-part =
    { $part ->
        [boards] la especie de las tablas
        [room] el pueblo o la ciudad
       *[readings] { $count ->
            [one] 1 lectura
           *[other] { $count } lecturas
        }
    }

## In the window

next-room = Cuarto
next-room-place = Lugar
next-room-more = Más sobre el cuarto: altura, lecturas, archivos
next-boards = Tablas
next-boards-more = Más sobre las tablas: perfil, clavado, pintura, qué tan seguro
next-gate-more = Más sobre la entrega
next-assumed-boards = Suponemos { $what }. Una probabilidad de { $chance } nos basta.
next-planned = { $profile }; clavado: { $nailing }; atrás: { $backing }; pintura: { $paint }
next-assumed-delivery =
    { $promised ->
        [yes] El medidor está puesto en { $setting }; se prometió { $most } como máximo.
       *[no] El medidor está puesto en { $setting }; no se prometió ninguna humedad.
    }
next-gate = Entrega y lecturas del medidor
next-watch = Pila
next-record = Papeles
next-begin = Revise las tablas antes de instalarlas. Ponga el cuarto, las tablas y 8 lecturas, y aquí ve si conviene instalarlas, esperar o devolverlas.
next-begin-here = Planear una instalación
next-begin-new = Planear la próxima instalación en este cuarto
    .hint = Crea un trabajo nuevo con el mismo cuarto y las mismas tablas. Antes se le pide guardar este.
next-column-number = #
next-column-board = Tabla
next-column-reading = Lectura, %
next-column-pins = Prof. de agujas
next-column-date = Fecha
next-reading-board = Tabla de la lectura { $number }
next-reading-reading = Lectura de la tabla { $number }
next-reading-wood = Temperatura de la madera de la tabla { $number }
next-reading-pins = Profundidad de las agujas en la tabla { $number }
next-reading-date = Fecha de la lectura de tabla { $number }
next-reading-remove = Quitar la lectura de tabla { $number }
next-reading-fresh = Lectura de la tabla siguiente
next-reading-fresh-date = Fecha de la lectura de la tabla siguiente
next-reading-add = Agregar lectura de tabla
next-undo-remove = Quitar lectura de tabla
next-same = Copiar a todas la temperatura y la profundidad de la tabla 1
    .hint = Copia la temperatura de la madera y la profundidad de las agujas de la primera tabla a todas las de ese día
next-today = Empezar las lecturas de hoy
    .hint = Las lecturas que escriba desde ahora son de hoy
next-at-delivery = Tomadas al entregar
    .hint = Las lecturas del último día de la lista, y las que escriba desde ahora, cuentan como tomadas el día en que llegaron las tablas
next-picture = Humedad promedio de la pila: de { $from } a cerca de { $to } el { $date }. La banda azul la contiene 9 de cada 10 veces. La línea vertical es el día en que están listas; la barra verde sobre ella, lo que pueden promediar las tablas que mida ese día. Líneas punteadas: en el centro de la tabla y cerca de la cara.
next-picture-strip = instalar dentro de esto
next-picture-ready = listas el { $date }
next-picture-dashes = punteado: centro de la tabla y cerca de la cara
next-write = Guardar el registro…
    .hint = Guarda el registro de entrega y una tarjeta de una página para la cuadrilla en PDF, los datos para otros programas y una cita de calendario si algo sigue.
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
## On paper

next-paper-record = Registro de entrega
next-paper-card = Tarjeta de entrega para la cuadrilla
next-paper-delivery = Entrega
next-paper-readings = Lecturas
next-paper-supplier = Proveedor
next-paper-delivered = Entregadas
next-paper-promised = Máximo prometido
next-paper-boards = Tablas
next-paper-boards-value = { $count } tablas, cara de { $width }, { $thickness } de grueso
next-paper-species = Especie
next-paper-species-sold = { $species }, tomada por lo que se vende como { $sold_as }
next-paper-joints = Juntas
next-paper-planned = Se planean como
next-paper-not-cooled = sin aire acondicionado ni deshumidificador
next-paper-air = El cuarto al medir
next-paper-air-value = { $temperature }, { $humidity } de humedad
next-paper-house = Calefacción a
next-paper-wanted = Para el
next-paper-meter = Medidor puesto en
next-paper-stack = Pila
next-stack = { $piling }, en { $kept }
next-stack-opened =
    { $before ->
        [solid] { $stack }, tabla sobre tabla hasta el { $date }
       *[wrapped] { $stack }, envueltas hasta el { $date }
    }
next-paper-measured-by = Midió
next-paper-reading = Lectura
next-paper-presets = La temperatura de la madera quedó en su valor inicial, { $wood }.
next-paper-wood = Temp. de la madera
next-paper-blanks = Lecturas
next-paper-blank-board = Tabla
next-paper-blank-reading = Lectura, %
next-paper-sign-measured = Midió
next-paper-sign-received = Recibió
next-card-stickers =
    { $lie ->
        [yes] Deje las tablas con separadores en el cuarto: un separador cada { $apart }, uno encima del otro.
       *[no] Ponga las tablas con separadores en el cuarto en cuanto lleguen: un separador cada { $apart }, uno encima del otro.
    }
next-card-where = Mida tablas de arriba, de en medio y de abajo de la pila, a { $end } o más de la punta.
next-card-pins = Meta las agujas a lo largo de la veta, a un cuarto del grueso. Ponga el medidor en la especie. Anote cada lectura como la muestra el medidor, con la temperatura de la madera al lado.
next-card-compare = Para comparar una lectura con un rango de esta tarjeta, corríjala por la temperatura de la madera con la tabla del medidor.
next-card-type = Llame con las lecturas antes de instalar una tabla.
next-card-hang = Deje la separación de arriba en cada junta.
next-card-hang-soon = Instálelas en unos pocos días. Si se quedan más tiempo, mida otra vez 8 de ellas.
next-card-single = Aparte la tabla que marque 3% o más por arriba o por debajo de las demás.
next-card-back = No instale estas tablas, ni las corte.
next-card-cover = Deje las tablas como están ({ $stack }), sin tocar el piso y secas, hasta que las recojan.
next-card-photos = Tome fotos del sello, del papel de entrega y del medidor puesto en una tabla. Guárdelas con el registro.
next-card-change = No instale estas tablas hasta que cambie el plan.
next-card-sort = Mida todas las tablas y anote la lectura atrás de cada una.
next-card-piles = Haga dos pilas: las que están secas para instalarse y las demasiado húmedas. Ponga la pila húmeda con separadores en el cuarto.
next-paper-untitled = Tablas para la próxima instalación
next-calendar = Medir las tablas: { $title }
next-calendar-hang = Instalar las tablas: { $title }
next-calendar-meter-hang = Medir 8 tablas y luego instalarlas: { $title }
next-calendar-back = Devolver las tablas: { $title }

pick-record = Guardar el registro
    .field = Carpeta para el registro
    .button = Guardar

why-next-install = Antes de la próxima instalación
