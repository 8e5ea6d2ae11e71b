### What is wrong with a job: each message names the value and the rule, its fix says what to do and what is
### done until then.

problem-severity = { $severity ->
        [note] nota
        [warning] aviso
       *[error] error
    }

## Where

place-file = Archivo, línea { $line }, columna { $column }
place-whole-file = Archivo
place-surface = { $surface }: { $field }
place-part = { $part ->
        [section] { $surface }, sección { $name }: { $field }
       *[opening-or-divider] { $surface }, { $name }: { $field }
    }
place-whole-section = { $surface }, sección { $section }
place-gap = Lectura de abertura { $number }, { $surface } { $joint }: { $field }
place-moisture = Lectura de humedad { $number }: { $field }
place-room = Lectura del cuarto { $number }: { $field }
place-month = { $month ->
        [1] Enero
        [2] Febrero
        [3] Marzo
        [4] Abril
        [5] Mayo
        [6] Junio
        [7] Julio
        [8] Agosto
        [9] Septiembre
        [10] Octubre
        [11] Noviembre
       *[12] Diciembre
    }: { $field }
place-stacked = Lectura de tabla { $number }: { $field }
place-visit = Visita del { $date }: { $field }
place-later-gap = Visita del { $date }, { $surface } { $joint }: { $field }

## The file

problem-left-out = { $reason ->
        [unknown-field] “{ $about }” no se conoce aquí
        [missing-field] Falta “{ $about }”
        [twice-field] “{ $about }” está dos veces
        [unknown-choice] “{ $about }” no es una de las opciones
        [list] Se esperaba una lista
        [text] Se esperaba un texto entre comillas
        [true-or-false] Se esperaba true o false
        [comma] Se esperaba una coma
        [colon] Se esperaban dos puntos
        [name] Se esperaba un nombre
        [number] Se esperaba un número
        [closing-bracket] Se esperaba un paréntesis que cierra
        [opening-bracket] Se esperaba un paréntesis que abre
        [ends] El archivo termina antes de tiempo
        [trailing] Hay algo después del final del trabajo
       *[other] { $about }
    }. “{ $text }” no se tomó en cuenta.
    .fix = Escríbalo otra vez, o corrija el archivo y ábralo de nuevo.
problem-unknown-entry = Este programa no conoce “{ $name }”.
    .fix = Se conserva como está. Puede que un Gapwright más nuevo lo conozca.

## Ranges

# $of is what the figure is of: an item by its number or its name, a line of the price, or the field itself.
problem-out-of-range = { $of ->
        [number] Número { $number }: { $value } no está entre { $low } y { $high }.
        [name] “{ $name }”: { $value } no está entre { $low } y { $high }.
        [labour] Mano de obra: { $value } no está entre { $low } y { $high }.
        [materials] Materiales: { $value } no está entre { $low } y { $high }.
        [equipment] Equipo: { $value } no está entre { $low } y { $high }.
        [overhead] Gastos generales: { $value } no está entre { $low } y { $high }.
        [contingency] Imprevistos: { $value } no está entre { $low } y { $high }.
        [profit] Ganancia: { $value } no está entre { $low } y { $high }.
        [minimum] Cobro mínimo: { $value } no está entre { $low } y { $high }.
        [tax] Impuesto: { $value } no está entre { $low } y { $high }.
        [rounding] Redondeo: { $value } no está entre { $low } y { $high }.
       *[field] { $value } no está entre { $low } y { $high }.
    }
    .fix = { $mended ->
        [used] Corríjalo. Mientras tanto, se usa { $used }.
       *[left-out] Corríjalo. Mientras tanto, no se usa.
    }
problem-too-many = Hay { $count }, más de { $most }.
    .fix = Quite algunos. Mientras tanto, se usan los primeros { $most }.

## The drawing

problem-no-boards = “{ $surface }” no tiene tablas.
    .fix = Elija un patrón.
problem-same-surface = Dos superficies se llaman “{ $name }”.
    .fix = Cambie el nombre de una, para que las lecturas sepan de cuál son.
problem-same-section = Dos secciones se llaman “{ $name }”.
    .fix = Cambie el nombre de una, para que las lecturas sepan de cuál son.
problem-profile-too-wide = Un perfil de { $size } en cada canto no cabe en la tabla.
    .fix = Escriba el ancho de un chaflán o del bocel, como 1/8 in o 3 mm. Mientras tanto, se usa { $used }.
problem-not-in-catalog = “{ $name }” no está en el catálogo.
    .fix = { $listed ->
        [species] { $count ->
            [0] Elija una especie de la lista.
            [one] Ese es un nombre comercial. La especie que se vende así es { $sold }.
           *[other] Ese es un nombre comercial de varias especies: { $sold }. El sello o el proveedor dice cuál es.
        } Mientras tanto, estas tablas no se calculan.
        [place] Elija de la lista el lugar más cercano, o escriba doce meses. Mientras tanto, no se conoce el aire del cuarto.
       *[other] Elija uno de la lista. Mientras tanto, la reparación no se calcula.
    }

## Readings

problem-no-such-joint = No hay junta “{ $joint }” en “{ $surface }”.
    .fix = Elija otra vez la junta en el dibujo, o quite la lectura. Mientras tanto, se conserva y no se usa.
problem-no-such-section = No hay sección “{ $section }” en “{ $surface }”.
    .fix = Elija otra vez la sección. Mientras tanto, la lectura solo cuenta para secciones sin lecturas propias.
problem-near-tongue = Una abertura de { $width } es casi tan ancha como larga la lengüeta ({ $tongue }).
    .fix = Revise si las tablas se zafaron. Esta junta no se arregla solo con sellador.
problem-gaps-differ = { $joint } se midió como { $earlier } y como { $later }.
    .fix = Mida otra vez y quite la equivocada. Mientras tanto, se usa el promedio.
problem-moistures-differ = La misma tabla se leyó como { $earlier } y como { $later }.
    .fix = Lea otra vez, con las agujas a lo largo de la veta. Mientras tanto, se usa el promedio.
problem-no-reading = Todavía no hay cifra.
    .fix = Escriba lo que marca el medidor. Mientras tanto, la lectura no se usa.
problem-meter-unsure = Un medidor de agujas no es confiable a { $reading }, solo de { $low } a { $high }.
    .fix = La lectura se usa como está. Si importa, pese una pieza y séquela en horno.
problem-meter-unlike-rest = Corregidas por la temperatura, las lecturas del medidor aquí dan { $says }, pero el aire del cuarto y todo lo demás ponen estas tablas entre { $low } y { $high }.
    .fix = Revise el ajuste de especie del medidor y la temperatura de la madera, o mida en otro lugar. Si aquí está entrando agua, averigüe primero por dónde.
problem-open-between-fixed = La junta { $joint } mide { $width }, pero sus tablas están anotadas con clavos en los dos cantos, y eso la mantendría cerrada.
    .fix = Revise cómo están clavadas las tablas. Con clavos en los dos cantos no se mueven, y ninguna junta entre ellas se abre.
problem-all-closed = Las { $count } aberturas marcan 0: ninguna junta se ha abierto.
    .fix = Mida las juntas donde ve una línea. Si no se ve ninguna, no hay nada que reparar.
problem-not-this-room = El higrómetro marca { $reading }, pero el cuarto, como está descrito, estaría entre { $low } y { $high } en esta época del año.
    .fix = Pruebe el higrómetro en otro cuarto. Si está bien, corrija los datos del cuarto: humidificador, aire en invierno o en verano.
problem-dated-after-visit = { $date } es después de la visita del { $visited }.
    .fix = Corrija la fecha, o la fecha de visita. Mientras tanto, la lectura cuenta como tomada en la visita.
problem-dated-before-install = { $date } es antes de que se instalaran las tablas, { $installed }.
    .fix = Corrija la fecha, o la fecha de instalación. Mientras tanto, la lectura cuenta como tomada en la visita.
problem-dated-long-before = La lectura es del { $date }, { $days } días antes de la visita.
    .fix = Cuenta como tomada en la visita. Mida otra vez si puede.

## The air

problem-cools-below-heat = El aire acondicionado en { $cool } está por debajo de la calefacción en { $heat }.
    .fix = Ponga el aire acondicionado más alto que la calefacción. Mientras tanto, el cuarto se queda en { $heat } todo el año.

## Dates

problem-installed-after-visit = { $installed } es después de la visita del { $visited }.
    .fix = Corrija una de las dos. Mientras tanto, la fecha de instalación no se usa.
problem-built-after-visit = { $built } es después de la visita del { $visited }.
    .fix = Escriba el año, o déjelo vacío. Mientras tanto, no se usa.
problem-seals-before-visit = { $date } es antes de la visita del { $visited }.
    .fix = Elija un día posterior, o déjelo vacío. Mientras tanto, se usan las mejores semanas.
problem-seals-too-late = { $date } es después del { $last }, el último día del pronóstico.
    .fix = Elija un día anterior, o déjelo vacío. Mientras tanto, se usan las mejores semanas.
problem-wanted-before-delivery = Las tablas se necesitan el { $wanted }, antes de que lleguen el { $delivered }.
    .fix = Corrija la fecha, o déjela vacía. Mientras tanto, no se usa.
problem-read-before-delivery = Esta lectura es del { $date }, antes de que llegaran las tablas el { $delivered }.
    .fix = Corrija la fecha de la lectura o de la entrega. Mientras tanto, la lectura cuenta como de la entrega.
problem-read-too-late = Esta lectura es del { $date }, mucho después de que llegaran las tablas el { $delivered }.
    .fix = Corrija la fecha de la lectura o de la entrega. Mientras tanto, la lectura no se usa.

## The plan

problem-shares-over-whole = { $line ->
        [none] El { $contractor } del contratista y el { $supplier } del proveedor suman más que todo el precio.
        [labour] Mano de obra: el { $contractor } del contratista y el { $supplier } del proveedor suman más que el total.
        [materials] Materiales: el { $contractor } del contratista y el { $supplier } del proveedor suman más que el total.
        [equipment] Equipo: el { $contractor } del contratista y el { $supplier } del proveedor suman más que el total.
        [overhead] Gastos generales: el { $contractor } del contratista y el { $supplier } del proveedor suman más que el total.
        [contingency] Imprevistos: el { $contractor } del contratista y el { $supplier } del proveedor suman más que el total.
        [profit] Ganancia: el { $contractor } del contratista y el { $supplier } del proveedor suman más que el total.
        [minimum] Cobro mínimo: el { $contractor } del contratista y el { $supplier } del proveedor suman más que el total.
        [tax] Impuesto: el { $contractor } del contratista y el { $supplier } del proveedor suman más que el total.
       *[rounding] Redondeo: el { $contractor } del contratista y el { $supplier } del proveedor suman más que el total.
    }
    .fix = Baje uno de los dos. El dueño paga el resto. Mientras tanto, la parte del proveedor es { $used }.
problem-stock-too-short = La tabla más larga mide { $board }, y del largo de compra más largo, { $stock }, solo quedan { $good } después del despunte.
    .fix = Agregue un largo de compra mayor, o ponga un largo máximo en la sección. Mientras tanto, las opciones con tablas nuevas no se calculan.
problem-no-stock = No hay largos de compra.
    .fix = Escriba los largos en que se venden las tablas. Mientras tanto, las opciones con tablas nuevas no se calculan.
problem-minutes-out-of-order = Sus minutos para “{ $task }” ({ $least }, { $likely }, { $most }) deben ser mayores que 0 e ir de menor a mayor.
    .fix = Póngalos en orden. Mientras tanto, se usan los del catálogo.
problem-no-such-task = Sus minutos para “{ $task }” no se usan: esa tarea ya no existe, o su tiempo ahora depende de otra cosa.
    .fix = Escriba sus minutos otra vez en Tareas.
problem-wage-like-charge = Un sueldo de { $wage } cobra { $charged } la hora. ¿{ $wage } es su tarifa por hora con todo incluido?
    .fix = Si lo es, cambie a una tarifa por hora.
problem-no-timed-minutes = Todavía no están los minutos.
    .fix = Escriba cuánto le tomó a una persona. Mientras tanto, se usa el tiempo del catálogo.
problem-no-such-timed-section = No hay sección “{ $section }” en “{ $surface }”.
    .fix = Elija la sección que se midió. Mientras tanto, se usa el tiempo del catálogo.

## The price book

problem-book-figure = “{ $entry }”: { $figure ->
        [stretch] el estiramiento de { $value }
        [squeeze] la compresión de { $value }
        [solids] los sólidos de { $value }
        [transfer] el aprovechamiento de { $value }
        [cure] el tiempo de curado de { $value }
        [recoat] el tiempo entre manos de { $value }
        [film] la película seca de { $value }
        [pack] un envase de { $value }
        [price] un precio de { $value }
        [coverage] lo que alcanza una pieza, { $value },
       *[batch] un lote de { $value }
    } no está entre { $low } y { $high }.
    .fix = Corríjalo en Catálogo. Mientras tanto, no se usa.
problem-book-no-pack = “{ $entry }” no tiene tamaño de envase ni de bote.
    .fix = Agregue uno. Mientras tanto, no se usa.
problem-book-minutes = “{ $entry }”: los minutos { $least }, { $likely }, { $most } deben ser mayores que 0 e ir de menor a mayor.
    .fix = Póngalos en orden. Mientras tanto, no se usa.
problem-book-no-task = “{ $entry }” no tiene ninguna tarea entre sus pasos.
    .fix = Agregue las tareas que lleva. Mientras tanto, no se usa.
problem-book-too-few-tasks = “{ $entry }” cierra las juntas en menos de tres tareas.
    .fix = Agregue las tareas que lleva, desde abrir las juntas hasta limpiar. Mientras tanto, no se usa.
problem-unknown-step = “{ $method }” tiene un paso “{ $step }” que no es una tarea del catálogo.
    .fix = Quite el paso, o agregue esa tarea. Mientras tanto, el paso se salta.
problem-former-rates = Los tiempos guardados con este trabajo ya no se usan, porque estas tareas ahora se cuentan de otra forma: { $tasks }. Se usan los tiempos del catálogo.
    .fix = Revise las tareas en Precio y ponga sus propios minutos donde los tenga.
problem-old-prices = Estos precios tenían más de un año el día de la visita: { $names }.
    .fix = Pida precios nuevos y anótelos en Catálogo.

## What follows from the entries

problem-beyond-drying = Una abertura promedio de { $gap } es más de lo que explica el secado desde verde.
    .fix = Busque otra causa: una filtración, tablas que se mojaron y se aplastaron entre sí, tablas pegadas en grupos, estructura que se movió.
problem-sealed-off = La pintura no deja pasar humedad y por detrás las tablas están pegadas a tablarroca o yeso; según estos datos, las tablas nunca cambian.
    .fix = Revise la pintura y lo que hay detrás. Ninguna pintura es tan cerrada.
problem-opens-past-tongue = En las semanas más secas una junta típica se abre hasta { $gap }, más que la lengüeta de { $tongue }.
    .fix = Ahí las tablas se zafan: el sellador solo no lo sostiene.
problem-wetted = Las tablas tienen { $moisture }, más húmedas que el { $wettest } al que puede llevarlas este cuarto.
    .fix = Primero encuentre de dónde viene el agua, y trabaje cuando estén secas.
problem-pushes = En la temporada húmeda { $joints ->
        [one] se cierra 1 junta medida
       *[other] se cierran { $joints } juntas medidas
    } y las tablas se empujan entre sí, más en { $most }, donde se hincharían { $push } más allá de cerrada.
    .fix = Ahí espere juntas apretadas, quizá cantos aplastados o clavos salidos, y déjelas sin sellar.

problem-climate-unreadable = No se puede leer el clima de “{ $place }”: la tabla del propio programa está dañada.
    .fix = Instale otra vez el programa, o escriba doce meses. Mientras tanto, no se conoce el aire del cuarto.
