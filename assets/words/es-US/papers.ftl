### The papers: their names, and the headings, labels and sentences of their templates. Templates are
### handed every message here that has no arguments, by its id; the rest reaches them filled in.

paper-name = { $paper ->
    [letter] Carta al dueño
    [proposal] Propuesta
    [crew-card] Tarjeta de la cuadrilla
    [measuring-sheet] Hoja para medir
    [price-sheet] Hoja de precio
    [work-order] Orden de trabajo
    [buying-list] Lista de compras
    [evidence-sheet] Hoja de evidencia
    [follow-up-report] Informe de seguimiento
    [owner-page] Página para el dueño
    [calendar] Calendario
   *[follow-up-card] Tarjeta de seguimiento
}
paper-page = página { $page } de { $pages }
paper-logo = Logotipo
paper-date = fecha
paper-nothing-chosen = Todavía no se ha elegido ninguna opción de reparación.
paper-cautions = Notas de seguridad
paper-source-memory = { $source }; de memoria
paper-none = –

## Letter

paper-letter = Carta
paper-about = Sobre sus tablas{ $named ->
    [yes] : { $title }
   *[no] {""}
}
paper-surface-drawing = Dibujo de { $surface } con sus juntas abiertas
paper-surface-caption = Juntas abiertas, dibujadas 10 veces más anchas. Oscuras: medidas. Claras: estimadas.
paper-sections-drawing = Cortes de una junta típica: al instalar, hoy y en cada temporada que viene
paper-sections-caption = Cortes de una junta típica a tamaño real, con el lado del cuarto hacia arriba.
paper-sections-caption-sealed = Cortes de una junta típica a tamaño real, con el lado del cuarto hacia arriba. Desde el { $date }, con el cordón nuevo.
paper-year-drawing = Una junta típica y la humedad de las tablas durante el próximo año
paper-year-caption = Una junta típica durante el próximo año si no se hace nada.
paper-cost = Cuánto cuesta
paper-we-cover = Cubrimos nosotros, por cortesía
paper-supplier-covers = Se le pide al proveedor
paper-option-against = no recomendada
paper-payers-open = Falta acordar quién paga cuánto
paper-you-pay = Usted paga
paper-total = Total
paper-deposit = Usted paga { $amount } antes de empezar el trabajo.
paper-options = Opciones que consideramos
paper-option-price = precio
paper-option-days = días
paper-option-look = cómo queda
paper-option-reopening = se abre otra vez
paper-promise = Nuestra garantía y lo que le pedimos
paper-warranty = Garantizamos este trabajo por { $years ->
    [one] 1 año
   *[other] { $years } años
}{ $proposal ->
    [later] . Las condiciones estarán en nuestra propuesta, cuando hayamos acordado quién paga qué.
   *[there] , en los términos de nuestra propuesta.
}
paper-before-work = Antes de empezar el trabajo
paper-letter-close = Llámenos si tiene cualquier pregunta.
paper-sign-contractor = Por el contratista
paper-sign-owner = Dueño de la casa

## Price sheet

paper-initials = Leí esto y de todos modos quiero la reparación. Iniciales del dueño:
paper-draft-errors = { $count ->
    [one] BORRADOR, no entregar: un dato no se puede usar ({ $places }).
   *[other] BORRADOR, no entregar: { $count } datos no se pueden usar ({ $places }).
}
paper-draft-incomplete = BORRADOR, no entregar: todavía faltan datos.
paper-draft-nothing-measured = BORRADOR, no entregar: todavía no se ha medido ninguna abertura.
paper-draft-no-boards = BORRADOR, no entregar: no hay tablas dibujadas.
paper-draft-payers-open = BORRADOR, no entregar: falta acordar quién paga.
paper-draft-finished = BORRADOR, no entregar: la obra se terminó el { $on }.
paper-draft-measured-again = BORRADOR, no entregar: se volvieron a medir juntas el { $on }.
paper-held-incomplete = Todavía faltan datos.
paper-held-nothing-measured = Todavía no se ha medido ninguna abertura.
paper-held-no-boards = No hay tablas dibujadas.
paper-held-payers-open = Es probable que las tablas se instalaran demasiado húmedas, así que quien las vendió o las instaló puede deber una parte. Indique en Precio quién paga.
paper-held-finished = La obra se terminó el { $on }, así que ya no hay nada que ofrecer. El informe de seguimiento dice cómo resultó.
paper-held-measured-again = Se volvieron a medir juntas el { $on }, así que esta oferta contaría desde una visita anterior. Para ofrecer la reparación de nuevo, guarde una copia del trabajo, ponga ese día como visita y escriba esas aberturas en Medir.
paper-held = No se guardó: { $papers }.
paper-held-drafts = Corrija eso, o guárdelos como borradores: cada página dice entonces que lo es.
paper-not-priced = Todavía no se puede poner precio a nada.
paper-missing = Sigue:
paper-price-range = rango del 80%: { $low } a { $high }
paper-price = Precio
paper-contractor-pays = Cubrimos nosotros
paper-supplier-pays = Se le pide al proveedor
paper-owner-pays = Paga el dueño
paper-margin = La ganancia es { $margin } del precio antes de impuesto.
paper-cost-spread = Rango del costo
paper-cost-chances = En { $trials } trabajos simulados, la mano de obra y los materiales sin gastos generales quedaron en menos de { $half } la mitad de las veces, en menos de { $eight } en 8 de 10 y en menos de { $nine } en 9 de 10.
paper-cost-drivers = Lo que más mueve el costo, del mejor al peor caso:
paper-labor = Mano de obra: { $hours } horas, cuadrilla de { $crew }, { $days ->
    [one] 1 día
   *[other] { $days } días
} de trabajo, cuarto cerrado { $closed ->
    [one] 1 día
   *[other] { $closed } días
}
paper-task = tarea
paper-batches = lotes
paper-minutes-each = min c/u
paper-hours = horas
paper-rate-from = de dónde sale el tiempo
paper-batch-note = { $units ->
    [inches] Un lote son 100 pies de juntas, 100 pies² de superficie, 10 pies de moldura, una sección o una visita, según la tarea.
   *[millimeters] Un lote son 30.5 m de juntas, 9.3 m² de superficie, 3 m de moldura, una sección o una visita, según la tarea.
} Los minutos son de una persona, promedio del mejor caso, el más probable y el peor.
paper-materials = Materiales
paper-item = artículo
paper-needed = se necesita
paper-buy = comprar
paper-each = c/u
paper-amount = importe
paper-with-line-above = con la línea de arriba
paper-cutting-list = Lista de cortes
paper-boards = tablas
paper-board-length = largo
paper-cut-into = cortar en
paper-offcut = sobrante
paper-cut = { $count } × { $length }
paper-internal = Interno: muestra sueldos, gastos generales y ganancia. No es para el dueño.
paper-internal-mark = INTERNO, no es para el dueño
paper-check-first = Revise primero
paper-days = Calendario
paper-day = día { $day }
paper-days-note = Lleno: la cuadrilla trabaja. Solo contorno: algo se seca o cura.

## Work order

paper-crew = Equipo de { $crew }, { $days ->
    [one] 1 día
   *[other] { $days } días
} de trabajo, cuarto cerrado { $closed ->
    [one] 1 día
   *[other] { $closed } días
}
paper-surface-map = Mapa de { $surface }
paper-where = Secciones, en este orden
paper-section = sección
paper-joints = juntas
paper-run = largo
paper-typical-gap = abertura típica
paper-bead-depth = grueso del cordón
paper-sealant = sellador
paper-boards-at = humedad
paper-hours-note = Se llega a las { $starts }, con { $lunch } de comida que no se pagan. Las horas de cada quien incluyen el viaje, la preparación y la limpieza.
paper-hours-note-no-lunch = Se llega a las { $starts }, y las horas de cada quien incluyen el viaje, la preparación y la limpieza.
paper-hand-back = El dueño usa el cuarto en la tarde: antes de irse, enrolle el plástico, destape el piso y barra.
paper-from-to = { $from } a { $to }
paper-place = { $surface }, { $section }
paper-place-wet = { $surface }, { $section } (mojada: primero dejar secar)
paper-where-note = Aberturas y humedad de las tablas como se esperan en la semana del { $date }.
paper-where-note-boards = Aberturas y humedad de las tablas como se esperan el { $date }. Si el medidor marca más de 2% sobre lo que dice el cuadro, pare y llame: puede haber una filtración.
paper-office = Oficina
paper-wood-is = Madera
paper-work-how = Cómo se hace
paper-unwanted = No recomendamos esta reparación. El dueño la pidió de todos modos: no empiece antes de que haya puesto sus iniciales en la advertencia de la propuesta.
paper-how-step =
    { $step ->
        [line-cut] Pase una regla y un raspador o una multiherramienta a lo largo de cada junta hasta que la línea quede pareja de punta a punta. No corte más ancho que la parte más abierta de esa junta.
        [line-edges] Mate los dos cantos con lija 150 para que agarre la pintura. Aspire la junta.
        [line-paint] Imprima la madera desnuda. Pinte la lengüeta y los dos cantos con brocha chica, dos manos delgadas del color de la pared, y limpie lo que tape la línea.
        [new-paint] Imprima y pinte las tablas nuevas por todos los lados antes de ponerlas, también lengüetas y puntas cortadas.
        [new-hang] Empiece derecho y a plomo. Instálelas bien juntas, clavadas solo por la lengüeta, para que cada tabla pueda moverse.
        [new-last] Corte a lo ancho la última tabla de la sección para que entre, con un poco de holgura detrás de la moldura.
        [relay-number] Numere las tablas por atrás al bajarlas y mantenga junta cada sección. Saque los clavos y limpie el sellador viejo.
        [relay-hang] Vuelva a ponerlas en orden, bien juntas, clavadas solo por la lengüeta, para que cada tabla pueda moverse.
        [relay-fill] Corte a lo ancho la tabla de relleno según lo que sobre al final de la sección.
        [strip-nail] Clave cada tapajuntas en una sola tabla, por un canto, para que las dos tablas puedan moverse. Va centrado sobre la junta.
       *[strip-paint] Pinte los tapajuntas por todos los lados antes de ponerlos. No los selle a las tablas.
    }
paper-bead = Cordón
paper-bead-shape =
    Dibujado 4 veces más grande. Abertura { $gap }. { $lay ->
        [bridge] Ponga el cordón de lado a lado de la junta, de { $depth } de grueso, para que pegue en las dos tablas. No rellene la ranura de atrás.
        [reveal] Ponga cinta en la lengüeta y luego un cordón de { $depth } de grueso que pegue solo en las dos tablas.
       *[on_tongue] Empuje el cordón hasta la lengüeta: { $depth } en total.
    }
paper-bead-first = El círculo marca dónde se soltaría primero.
paper-bead-backed = La ranura detrás del cordón queda vacía, menos donde la abertura es de { $least } o más: ahí meta respaldo, para que el cordón no se hunda.
paper-bead-v = Llene { $share } de la V.
paper-bead-limits = Aguanta estirarse { $stretch } y comprimirse { $squeeze }. No lo pinte durante { $cure }.
paper-narrow-joints = { $count ->
    [one] 1 junta más mide
   *[other] { $count } juntas más miden
} menos de { $narrowest } ese día: { $count ->
    [one] ráspela y píntela, no la selle.
   *[other] ráspelas y píntelas, no las selle.
}
paper-steps = Día por día
paper-plan-when = cuándo
paper-plan-what = qué
paper-plan-hours = horas c/u
paper-plan-taken = horas reales
paper-step-start = Día { $day }, { $time }
paper-step-end = hasta { $time }
paper-step-end-later = hasta el día { $day }, { $time }
paper-do-not = Lo que no se debe hacer
paper-do-not-seal = { $units ->
    [inches] No selle sobre cantos húmedos o con polvo, ni a menos de 40°F o más de 95°F, a menos que el cartucho diga otra cosa.
   *[millimeters] No selle sobre cantos húmedos o con polvo, ni a menos de 5°C o más de 35°C, a menos que el cartucho diga otra cosa.
}
paper-do-not-seal-wet = No selle mientras las tablas marquen más de { $most }.
paper-do-not-paint = No pinte hasta que el sellador haya curado y el dedo no deje marca.

paper-do-not-hang-wet = No instale las tablas nuevas hasta que 8 de ellas promedien { $most } o menos en el medidor.
paper-do-not-fill = No selle las juntas: se quedan como las deja esta reparación.

paper-map-every = Las juntas llevan número cada { $step }, y en los extremos. Cuente desde el número más cercano.
paper-map-seal = Rojo: selle esta junta. Punteado: ese día mide menos de { $narrowest }; déjela así o primero ábrala más. Gris: déjela como está.
paper-map-work = Rojo: esta junta se trabaja. Gris: déjela como está.
paper-map-boards = Rojo: estas tablas se quitan. Gris: solo se pintan.
paper-map-open = Rojo: juntas abiertas.
paper-map-evidence = Rojo: medida, con su número.
paper-map-photos = Puntos azules: fotos.
paper-map-reading = Azul: mida primero estas.
paper-seal-today = Selle hoy solo si
paper-seal-today-gaps = las juntas miden entre { $low } y { $high }
paper-seal-today-gaps-section = { $surface }, { $section }: las juntas miden entre { $low } y { $high }
paper-seal-today-wet = las tablas que se mojaron ya se secaron hasta ahí y la filtración está arreglada
paper-seal-today-boards = las tablas marcan { $most } o menos
paper-seal-today-edges = { $units ->
    [inches] los cantos están limpios y secos, y el cuarto está entre 40°F y 95°F
   *[millimeters] los cantos están limpios y secos, y el cuarto está entre 5°C y 35°C
}
paper-seal-today-room = el cuarto tiene más o menos la humedad que esperamos, de { $low } a { $high }
paper-seal-today-else = Si no, pare y llame: no es la época, o hay una filtración.
paper-products = Productos
paper-product-sealant = Sellador
paper-product-primer = Imprimador
paper-product-paint = Pintura
paper-product-use = uso
paper-product = producto
paper-product-class = clase, por lo menos
paper-product-color = color
paper-product-brand = marca y lote que se usó
paper-product-solids = { $solids } de sólidos
paper-phone = Teléfono del dueño
paper-getting-in = Cómo entrar
paper-crew-on-site = en la obra
paper-crew-people = personas
paper-hours-and-pieces = Horas y piezas que se usaron
paper-hours-and-pieces-note = Las horas son de todos juntos, según el plan. Anote lo que de verdad se tardó y se usó: de ahí salen los tiempos del próximo trabajo.
paper-hours-and-pieces-timed = La sección { $section }, la que usted cronometró, ya está raspada; falta lo demás. Las horas de ese raspado están en esta tabla, pero no en los días.
paper-hours-plan = horas
paper-taken = reales
paper-pieces-planned = piezas
paper-pieces-used = usadas
paper-joints-and-run = { $joints ->
    [one] 1 junta, { $run }
   *[other] { $joints } juntas, { $run }
}
paper-boards-and-area = { $boards ->
    [one] 1 tabla, { $area }
   *[other] { $boards } tablas, { $area }
}
paper-scope-what = qué se trabaja
paper-map = Mapa de juntas

## Measuring sheet

paper-reading-first = { $count ->
    [one] Mida primero esta junta: es la que más dice.
   *[other] Mida primero estas { $count } juntas, en este orden: cada una es la que más dice después de las anteriores.
}
paper-reading-enough = Las lecturas ya son bastante precisas. Las que tome de más también ayudan.
paper-reading-order = orden
paper-reading-gap = abertura
paper-reading-bead = cordón (entero, un lado, partido, pintura, exprimido)
paper-reading-again = Ya medidas
paper-reading-meter = Medidor de humedad
paper-reading-meter-name = medidor y en qué especie está puesto
paper-reading-board = cuál tabla
paper-reading-room = Cuarto
paper-reading-time = hora
paper-reading-by = midió
paper-reading-how = Mida la abertura debajo de la V, a la mitad de la junta; 0 si está cerrada. Meta las agujas a lo largo de la veta.
paper-reading-wood = temp. de la madera
paper-reading-temperature = temp. del cuarto
paper-reading-humidity = humedad

## Buying list

paper-aisle = { $aisle ->
    [sealant] Sellador
    [paint] Pintura e imprimador
    [lumber] Madera y tablas
    [supplies] Cinta, plástico, herramienta y consumibles
   *[other] Otros
}
paper-instead-sealant = cualquier sellador que se pueda pintar, de { $class } o más
paper-instead-paint = mismo tipo, por lo menos los mismos sólidos
paper-strip = { $name }, { $thick } × { $wide }
paper-color-is = Color: { $color }.
paper-color-blank = Color: ______________
paper-lumber-strip = { $species }, en los largos más grandes que tenga; la junta más larga mide { $longest }.
paper-lumber-board = { $species }, { $tongued ->
    [yes] machihembrada,{" "}
   *[no] {""}
}{ $profile }{ $sized ->
    [yes] {" "}{ $size }
   *[no] {""}
}, { $thickness } × { $width } (cara de { $face }){ $length ->
    [told] .
   *[longest] , hasta { $longest } de largo.
}
paper-lumber-dry = { $count ->
    [all] Deben promediar { $most } o menos en el medidor.
   *[eight] 8 de ellas deben promediar { $most } o menos en el medidor.
}
paper-needed-by = Se necesita para el
paper-or-use = o usar
paper-about-price = aprox.
paper-buying-note = Piezas enteras, con el desperdicio incluido. Los precios son los de este trabajo. Sirve cualquier marca que cumpla con la clase.

## Evidence sheet

paper-from-readings = Resultados
paper-surface = superficie
paper-mean-gap = abertura media (estimada)
paper-measured = medidas
paper-boards-now = tablas ahora (mejor estimación)
paper-at-install = al instalar (rango del 90%)
paper-room-mean = promedio del cuarto
paper-plus-minus = { $mean } ± { $error }
paper-measured-of = { $measured } de { $joints }
paper-moisture-readings = { $readings ->
    [0] { $moisture } (sin lecturas aquí)
    [one] { $moisture } (1 lectura)
   *[other] { $moisture } ({ $readings } lecturas)
}
paper-moisture-range = { $moisture } ({ $low }–{ $high })
paper-stamps = Sellos de la madera: qué tan seguro es que las tablas estaban más húmedas
paper-stamp = sello
paper-stamp-most = permite hasta
paper-stamp-chance = probabilidad de que las tablas lo pasaran al instalar
paper-photos = Fotos
paper-photo-number = no.
paper-photo-place = { $x } a la derecha, { $y } arriba
paper-photo-at = lugar
paper-photo-shows = qué muestra
paper-photo-file = archivo
paper-photo-column = foto
paper-photo-joint = Junta { $joint }: { $gap } el { $date }
paper-photo-alt = Foto { $number }, { $surface }
# Where the job's photos lie is a folder beside the job.
paper-photo-fault-name = “{ $file }” no es el nombre de una foto. Quítela del dibujo y ponga la foto otra vez.
paper-photo-fault-unreadable = { $cause ->
    [missing] “{ $file }” no está en la carpeta de fotos del trabajo. Devuélvala ahí o ponga la foto otra vez.
    [denied] No tiene permiso para leer “{ $file }”. Cambie sus permisos o ponga la foto otra vez.
   *[other] No se puede leer “{ $file }”. El sistema dice: { $system }. Ponga la foto otra vez.
}
paper-photo-fault-large = “{ $file }” tiene { $megabytes } MB; el límite de una foto es de { $limit } MB. Ponga una copia más pequeña.
paper-photo-fault-pixels = “{ $file }” tiene demasiados píxeles para imprimirla. Ponga una copia más pequeña.
paper-photo-fault-kind = “{ $file }” está dañada o no es un JPEG ni un PNG. Ponga otra copia de la foto.
paper-photo-fault-full = “{ $file }” no se muestra: las fotos anteriores llenan la hoja. Quite algunas o mándela aparte.
paper-photo-note = Las fotos se imprimen sin el lugar, la hora ni el aparato que la cámara guarda en sus archivos. Los originales se quedan con el trabajo.
paper-meter-setting = puesto en
paper-evidence-fair = Esta hoja dice qué tan húmedas estaban las tablas y qué tan seguro es eso. No culpa a nadie: una probabilidad de menos de 9 en 10, más o menos, no decide nada.
paper-causes = Probabilidad de cada causa
paper-causes-note = Las causas se pueden juntar, así que las probabilidades no suman 100%.
paper-odds = con todo lo que se sabe
paper-odds-before = antes de cualquier lectura
paper-clues-note = Aquí cada pista se sopesa por sí sola, y frente a otra causa, así que dos pistas pueden apuntar a lados opuestos. Las probabilidades de arriba las sopesan todas juntas.
paper-clue = lo que vimos
paper-clue-for = a favor de
paper-clue-against = en contra de
paper-clue-weight = { $cause }: unas { $factor } veces más probable con este dato
paper-clue-weight-over = { $cause }: más de { $factor } veces más probable con este dato
paper-clue-weight-against = { $cause }: unas { $factor } veces menos probable con este dato
paper-clue-weight-against-over = { $cause }: más de { $factor } veces menos probable con este dato
paper-next-reading = La lectura que más ayudaría ahora:
paper-does-not-fit = Lo que no cuadra y qué revisar
paper-inputs = Datos
paper-unknown = no se sabe
paper-input-days = { $days ->
    [one] 1 día de lecturas
   *[other] { $days } días de lecturas
}
paper-input-photos = { $photos ->
    [one] 1, marcada en el dibujo del archivo del trabajo
   *[other] { $photos }, marcadas en el dibujo del archivo del trabajo
}
paper-input-presumed = Sin pueblo indicado; calculado para una casa en { $place }
paper-input-boards = { $species }, cara de { $face }, { $thickness } de grueso, { $profile }; clavado: { $nailing }; detrás: { $backing }; pintura: { $paint }; veta { $grain }°
paper-gap-readings = Lecturas de aberturas
paper-joint = junta
paper-gap = abertura
paper-reading-date = fecha
paper-meter-readings = Lecturas del medidor de humedad
paper-board = tabla
paper-meter = medidor
paper-wood = madera
paper-meter-note = Tal como lo marcó el medidor, y corregido por la temperatura de la madera.
paper-meter-corrected = corregida
paper-meter-offset =
    { $side ->
        [low] Sopesado junto con las aberturas y el cuarto, este medidor parece marcar cerca de { $off } de menos, con un margen de { $doubt }. Las mejores estimaciones lo tienen en cuenta.
       *[high] Sopesado junto con las aberturas y el cuarto, este medidor parece marcar cerca de { $off } de más, con un margen de { $doubt }. Las mejores estimaciones lo tienen en cuenta.
    }
paper-claimed = Solicitado al proveedor
paper-room = El cuarto el día de la visita
paper-room-reading = { $temperature }, { $humidity } de humedad relativa
paper-method = Método
paper-method-shrinkage = Encogimiento: USDA Forest Products Laboratory, Wood Handbook (FPL-GTR-190, 2010), ec. 13-2 y tabla 13-5; fuera de 6–14% de humedad, según el encogimiento total (tablas 4-3 y 4-4).
paper-method-moisture = Humedad de equilibrio: Wood Handbook, ec. 4-5. Secado a través del grueso de la tabla por volúmenes finitos, con el aire del cuarto durante el año.
paper-method-install = Humedad al instalar: calculamos miles de historias posibles del cuarto y de las tablas, y cada una cuenta según lo bien que cuadra con todas las lecturas. El rango acierta 9 de cada 10 veces.
paper-method-odds = Causas: de las mismas historias. En 200 reclamos simulados, las causas con 90% o más acertaron 96 de cada 100 veces.
paper-method-marks = Sellos de la madera: American Softwood Lumber Standard PS 20 y reglas de clasificación, donde esta hoja los nombra.
paper-not-fault = Este es un estimado con pocas lecturas. No dice quién tiene la culpa; eso lo deciden los contratos, los papeles de entrega y la ley local.
paper-sign-measured = Midió
paper-sign-witnessed = Testigo

## Follow-up card

paper-no-gaps-yet = Primero mida unas aberturas: son las que se van a medir otra vez.
paper-look-again = Mida otra vez las mismas juntas, en los mismos lugares. Mejores fechas: la temporada húmeda, hacia el { $humid }, y la temporada seca, hacia el { $dry }.
paper-look-again-done = El trabajo se terminó el { $finished }. { $at ->
    [bead] Revise en las mismas juntas si hay abertura junto al cordón.
    [strip] Revise si alguna tira se despegó o se rajó.
   *[joint] Revise las mismas juntas.
} Mejores fechas: la temporada húmeda, hacia el { $humid }, y la temporada seca, hacia el { $dry }.
paper-follow-joints = Juntas
paper-at-visit = en la visita
paper-forecast-humid = pronóstico húmeda
paper-forecast-dry = pronóstico seca
paper-humid = húmeda
paper-dry = seca
paper-forecast-note = El pronóstico es para aberturas sin sellar entre tablas. Las juntas selladas no deben mostrar abertura.
paper-forecast-note-work = El pronóstico es para las juntas como están ahora. Una vez hecho el trabajo, ya no vale.
paper-room-and-boards = Cuarto y tablas
paper-humid-season = temporada húmeda
paper-dry-season = temporada seca
paper-row-date = Fecha
paper-row-temperature = Temperatura
paper-row-humidity = Humedad relativa
paper-row-moisture = Humedad de dos tablas por sección
paper-how = Cómo medir
paper-how-gap = Use un calibrador de hojas (feeler gauge) a la mitad de la junta, sin contar la V. Escriba 0 si la junta está cerrada.
paper-how-meter = Ponga el medidor de agujas en la especie y lea dos tablas por sección. Anote la temperatura de la madera.
paper-how-room = Deje el higrómetro una hora en el cuarto antes de leerlo.
paper-how-damp = Llámenos de inmediato si un lugar se ve o se siente húmedo.

## Follow-up report

paper-no-later-visit = Todavía no se ha vuelto a medir ninguna junta. Agregue una visita en Seguimiento.
paper-told = Lo que dijimos
paper-later-visit = Lo que pasó: visita del { $on }
paper-first-visit = primera visita
paper-map-first-visit = Rojo: medidas en la primera visita, con su número.
paper-told-range = dijimos
paper-told-chance = probabilidad de que se vea algo
paper-told-between = { $low } a { $high }
paper-came = medido
paper-came-opening = abertura

## What can go wrong

paper-fault-no-folder = No existe la carpeta “{ $path }” de donde tomar las plantillas. Elija una carpeta que exista, o primero guarde ahí las plantillas incluidas.
paper-fault-template = { $file }, línea { $line }: { $reason }. Corrija la plantilla o vuelva a la incluida.
paper-fault-template-no-line = { $file }: { $reason }. Corrija la plantilla o vuelva a la incluida.
paper-fault-no-page = { $file } no produce ninguna página. Corrija la plantilla o vuelva a la incluida.
paper-fault-template-size = { $file } tiene { $size } kB; el límite de una plantilla es de { $most } kB. Acórtela o vuelva a la incluida.
paper-fault-pdf = No se puede hacer el PDF: { $reason }
paper-fault-built-in-used = { $paper }: se usó la plantilla incluida. { $fault }
paper-instead-paint-solids = mismo tipo, al menos { $solids } de sólidos
paper-forecast-note-open = El pronóstico es para las aberturas entre las tablas.
