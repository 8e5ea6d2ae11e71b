### The Catalog room: prices and rates, each with its source.

catalog-heading = Precios y tiempos de este trabajo
catalog-kept-since = Guardados con el trabajo desde el { $date }. Un programa o un archivo de precios más nuevo no los cambia. Ponga el cursor sobre un nombre para ver de dónde salen sus cifras.
catalog-not-kept = Estos son los del programa. Se guardan con el trabajo la primera vez que se guarda. Ponga el cursor sobre un nombre para ver de dónde salen sus cifras.
catalog-sealants = Selladores
catalog-paints = Imprimadores y pinturas
catalog-materials = Otros materiales
catalog-tasks = Tareas y sus minutos
catalog-boards = Tablas
catalog-methods = Sus propias opciones de reparación
catalog-money-elsewhere = Los sueldos, el impuesto y la moneda están en Precio. Se guardan junto con estos para los trabajos nuevos.

offer-from = Precios de { $from }
offer-entry = en la lista
offer-none = no está
offer-same = Son los mismos que los del trabajo.
offer-more = y { $count } más
offer-field =
    { $field ->
        [name] Nombre
        [class] Clase
        [stretch] Límite al estirar
        [squeeze] Límite al comprimir
        [solids] Sólidos
        [cure] Tiempo de curado
        [packs] Tamaños y precios
        [film] Película seca de una mano
        [transfer] Aprovechamiento
        [sprayed] Aprovechamiento con rociadora
        [recoat] Otra mano después de
        [per] Se mide por
        [coverage] Una pieza alcanza para
        [batch] Tamaño del lote
        [minutes] Minutos por lote
        [fixed] Minutos aparte, sin importar la cantidad
        [also] Segundo tiempo
        [price] Precio de una pieza
        [priced] Precio del
        [kind] Tipo de fuente
        [source] Fuente
        [species] Especie
        [face-width] Ancho de cara
        [overall-width] Ancho total
        [thickness] Grueso
        [other-boards] Perfil, clavado, pintura
        [look] Cómo queda
        [disruption] Durante el trabajo
        [letter] Lo que dice la carta
        [outcome] Resultado en las juntas
        [materials] Materiales
       *[steps] Pasos
    }
offer-minutes = { $least } a { $most }, probable { $likely }
# A second rate of a task: 6.5 min per 10 ft of board. The amount has its unit.
offer-also = { $minutes } min por { $amount } { $unit }
offer-pack = { $pack } de { $holds } a { $price }
offer-can = { $holds } a { $price }
offer-differs = distinto
offer-take = Usar estos precios
offer-leave = Dejar el trabajo como está

learned-jobs = { $count ->
    [0] Ningún trabajo de esa carpeta tiene horas reales ni piezas usadas. Primero anótelas en Seguimiento.
    [one] De 1 trabajo terminado
   *[other] De { $count } trabajos terminados
}
learned-column-task = tarea
learned-column-start = catálogo, min
learned-column-yours = suyos, min
learned-column-jobs = trabajos
learned-column-weight = su peso
learned-column-material = material
learned-column-waste-start = catálogo, desperdicio
learned-column-waste-yours = suyo, desperdicio
learned-use = Usar estos tiempos
learned-leave = Dejar los tiempos como están

entry-name = Nombre en el catálogo
entry-copy = Copiar con otro nombre
entry-copy-name = { $name } (copia)
entry-restore = Volver a las cifras incluidas
entry-remove = Quitar
entry-price = Precio en el catálogo
entry-priced = Precio del { $date }.
entry-not-priced = Este precio no tiene fecha.
entry-stretch = Límite al estirar, %
    .hint = De su ancho al sellar
entry-squeeze = Límite al comprimir, %
    .hint = De su ancho al sellar
entry-solids = Sólidos, %
    .hint = Lo que queda cuando ya curó, por volumen
entry-cure = Tiempo de curado, h
    .hint = Antes de poder pintarlo
entry-pack-price = Precio de { $pack }, { $holds }
entry-pack-holds = Tamaño del envase
entry-pack-size =
    { $units ->
        [inches] Tamaño de { $pack }, oz líq
       *[millimeters] Tamaño de { $pack }, mL
    }
entry-film = Película seca de una mano
entry-film-in =
    { $units ->
        [inches] Película seca de una mano, mils
       *[millimeters] Película seca de una mano, µm
    }
entry-transfer = Aprovechamiento, %
    .hint = Cuánta pintura llega a la madera con brocha y rodillo
entry-sprayed = Aprovechamiento con rociadora, %
    .hint = Cuánta pintura llega a la madera con rociadora
entry-recoat = Otra mano después de, h
entry-can-price = Precio de { $holds }
entry-piece-for = Una pieza alcanza para
entry-piece-price = Precio de una pieza
entry-minutes = Minutos de una persona por lote: mínimo, probable y máximo.
entry-least = Mínimo, min
entry-likely = Probable, min
entry-most = Máximo, min
entry-batch = Tamaño del lote
entry-fixed = Aparte, min
    .hint = Minutos que toma sin importar cuánto haya, en cuanto hay algo
entry-also = Y por una segunda medida, min
    .hint = Minutos por un lote de lo que se nombra abajo; se suman a los otros
entry-also-batch = Tamaño del segundo lote
entry-own-rate = su propio tiempo
entry-source = { $source } ({ entry-kind })
entry-class-source = { $class }. { $source } ({ entry-kind })
entry-kind = { $kind ->
    [published] publicado
    [from_memory] de memoria
    [common_practice] práctica común
   *[assumption] supuesto
}
entry-no-boards = Todavía no hay. Guarde aquí con un nombre las tablas de una sección y úselas en otra parte.
entry-board = { $species }, { $wide } de ancho, { $thick } de grueso
entry-lay-boards = Usar en todas las secciones que se ven
entry-keep-boards = Guardar las tablas de…
entry-section = sección { $section }
undo-keep-boards = Guardar las tablas de una sección

own-none = Todavía no hay. Parta de la opción elegida en Opciones y cambie sus pasos.
own-add = Agregar una opción como la elegida
own-name = { $name } (mía)
own-remove = Quitar esta opción
own-field-name = Nombre de la opción
own-field-look = Cómo queda
own-field-living = Durante el trabajo
own-field-letter = Lo que dice la carta
own-leaves = Resultado en las juntas
own-outcome-bridge = un cordón de lado a lado de la V
own-outcome-tongue = un cordón hasta la lengüeta
own-outcome-reveal = un cordón sobre cinta en una junta más ancha
own-outcome-held = un cordón, con el cuarto entre 40% y 50% de humedad
own-outcome-line = líneas abiertas a propósito
own-outcome-covered = tapajuntas sobre las juntas
own-outcome-glued = tablas pegadas entre sí
own-outcome-boards = tablas bien juntas, secadas al nivel del cuarto
own-outcome-unchanged = las juntas como están
own-outcome-less = tablas que se mueven menos
own-wait-primer = esperar el imprimador
own-wait-sealant = esperar el sellador
own-wait-paint = esperar la pintura
own-wait-acclimation = esperar a que las tablas se aclimaten
own-wait-season = esperar las mejores semanas
own-materials = Materiales aparte de sellador y pintura
own-step-coats = { $task } (con espera después de cada una)
own-step-earlier = Subir: { $step }
own-step-remove = Quitar: { $step }
own-step-add = Agregar un paso…
undo-move-step = Mover paso
undo-remove-step = Quitar paso
undo-add-step = Agregar paso
