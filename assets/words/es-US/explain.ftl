### Where a number comes from: shown when the number is clicked.

explain-ask = { $what }: ¿de dónde sale?
    .hint = Haga clic para ver de dónde sale

explain-of = { $count } de { $all }
explain-range = { $low } a { $high }
explain-both = { $first } y { $second }

explain-mean-gap = El promedio de todas las juntas: las medidas, como usted las leyó; las demás, como se estiman con las historias posibles de este cuarto. Si eligió juntas anchas para medir, las demás son más angostas. ± es su error estándar.
    .source = Muestreo por importancia de historias posibles; supuestos en assets/belief.ron
explain-joints-measured = juntas medidas
explain-scatter = variación de una junta a otra

explain-now = Las lecturas del medidor, corregidas por la temperatura de la madera y comparadas con la humedad que el aire del cuarto daría a las tablas durante el año.
    .source = USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010); secado por volúmenes finitos implícitos, verificado con Crank, The Mathematics of Diffusion
explain-readings = lecturas
explain-expected-today = lo esperado hoy por el cuarto

explain-install = La humedad más probable de las tablas al instalarse: calculamos muchas historias desde la instalación hasta hoy, y cada una cuenta según lo bien que cuadra con las aberturas, el medidor y el cuarto. En cada una, al secarse, la tabla se angosta ΔD = D · C · (M₂ − M₁) entre 6% y 14%, y según el encogimiento total fuera de eso.
    .source = USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), ec. 13-2 y tabla 13-5 para el encogimiento, ec. 4-5 para el equilibrio
explain-gap-today = abertura hoy
explain-width-at-joint = ancho que se nota en una junta, D
explain-coefficient = C, por cada por ciento de humedad
explain-moisture-today = humedad hoy

explain-settled = Lo más seco y lo más húmedo que llegan a estar las tablas en un año, cuando ya no importa la humedad que traían: el aire del cuarto, día por día, a través del grueso y la pintura de las tablas.
    .source = USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), ec. 4-5 para el equilibrio; aire del cuarto según el clima, un archivo de clima o un registrador
explain-room-humidity = humedad del cuarto
explain-mean-of-year = promedio del año

explain-widest = La abertura de hoy, más lo que las tablas todavía encogen hasta las semanas más secas del próximo año.
    .source = USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), ec. 13-2; los días están en la línea de tiempo
explain-driest = lo más seco en un año ya asentado

explain-chance = En esta parte de { $trials } simulaciones, el dueño reclama dentro de { $years ->
    [one] 1 año
   *[other] { $years } años
} porque { $share } del largo de las juntas está abierto, o una abertura pasa de { $gap }.
    .source = Monte Carlo sobre historias posibles, con los mismos sorteos para cada opción
explain-interval = rango, 9 de cada 10 veces
explain-without-paint = sin contar solo grietas en la pintura
explain-tears = si las roturas detrás del cordón quedan ocultas, o si todas se ven
explain-tears-range = { $low } o { $high }
explain-converged = después de un cuarto y de la mitad de las simulaciones
explain-opens-again = se abre otra vez en promedio
explain-drawn = lo que se varía
explain-drawn-what = el clima de un año a otro, el lote de tablas, el lote de sellador, las lecturas, la mano de obra
explain-capability = lo que aguanta un cordón
explain-times-class = { $times } veces su clase ({ $kind ->
    [published] publicado
    [from_memory] de memoria
    [common_practice] práctica común
   *[assumption] supuesto
})

explain-expected = El precio, más los reclamos que se esperan en cada año de garantía: la probabilidad de uno por el costo de la visita (15% del precio, un supuesto), y el 85% del precio por la parte del trabajo que se abre y se repite. A valor presente. Se suman las fallas que no vienen del movimiento, como un tapajuntas que se raja.
    .source = Valor presente: ASTM E917
explain-year-chance = probabilidad de un reclamo en un año
explain-year-redone = del trabajo, lo que se repite en un año
explain-year-cost = lo que se espera que cueste un año
explain-price = precio
explain-nothing = Aquí no se cobra nada por ahora.
