### The command line: help texts and what it prints.

command-line = Por qué se abrieron las juntas selladas y pintadas, cómo se van a mover y qué reparación dura.
command-line-gapwright =
    .job = Trabajo que se abre en la ventana; si no se da ninguno, una página para empezar
command-line-assess = Muestra la respuesta
    .job = Archivo de trabajo, o una carpeta con varios para una tabla con una línea por trabajo
    .json = Muestra toda la evaluación en JSON
command-line-bead = Calcula cuánto se estira un cordón de sellador y cuánto de cada clase usa
    .gap = Ancho de la abertura al sellar, como 3/32in o 2.4mm; un número solo son pulgadas
    .v = Ancho del chaflán en la cara de cada tabla; 0 si los cantos son rectos
    .angle = Inclinación del chaflán respecto a la cara, en grados
    .fill = Cuánto de la profundidad de la V se llena, en por ciento
    .depth = Hasta dónde entra el cordón en la abertura debajo de la V
    .hollow = Qué tan hundida se alisa la cara, en por ciento de su ancho
    .solids = Sólidos del sellador, en por ciento por volumen
    .behind = Qué hay detrás del cordón: nada, la lengüeta pegada, cinta antiadherente o varilla de respaldo
    .open = Cuánto se abre la junta
    .close = Cuánto se cierra la junta
    .slide = Cuánto se deslizan las tablas una junto a otra
    .lift = Cuánto sube la cara de una tabla sobre la otra
    .json = Muestra JSON
command-line-new = Hace un trabajo con medidas y un patrón o un archivo de contornos, y con lecturas de tablas de datos
    .job = Archivo de trabajo que se guarda, .ron o .json
    .size = Dos lados de la superficie, como "18' x 9' 6\""; un número solo son pies, o milímetros
    .outline = Contornos en DXF, SVG o esquinas en CSV, en lugar de las medidas
    .surface = Nombre de la superficie
    .kind = ceiling, slope o wall: techo, techo inclinado o pared
    .pattern = straight, diagonal, quarters, quarters-at-dividers, chevron o upright
    .right = Alto de la pared en su extremo derecho, si el borde de arriba está inclinado
    .units = inches o mm: las unidades del trabajo y de los números solos
    .face = Ancho de cara de las tablas
    .overall = Ancho total de las tablas, con la lengüeta
    .thickness = Grueso de las tablas
    .species = Especie, como pine-eastern-white
    .gaps = Lecturas de aberturas en CSV (joint, gap; surface, bead, date, at) o JSON
    .meter = Lecturas del medidor en CSV (section, moisture; surface, board, wood_temperature, setting, date) o JSON
    .place = Ciudad, código ZIP o coordenadas, para el clima
    .visited = Día de la visita; si no se da, hoy
    .installed = Día o mes en que se instalaron las tablas
    .built = Año de construcción de la casa
    .title = Nombre del trabajo
    .owner = Dueño
    .address = Dirección
    .force = Guarda encima de un archivo que ya existe
command-line-check = Muestra los problemas de un trabajo
    .job = Archivo de trabajo, o una carpeta con varios
command-line-joints = Muestra cada junta: largo, abertura, movimiento, estiramiento del cordón
    .job = Archivo de trabajo
    .csv = En CSV, el único formato
command-line-year = Muestra el próximo año día por día: aire, humedad, aberturas
    .job = Archivo de trabajo
    .csv = En CSV, el único formato
command-line-export = Guarda todo para otros programas: JSON, CSV, SVG, PNG, DXF
    .job = Archivo de trabajo
    .out = Carpeta donde se guarda; se crea si no existe
command-line-ready = Muestra si una entrega de tablas está lista para instalarse
    .job = Archivo de trabajo
    .json = Muestra JSON
    .out = Guarda en esta carpeta el registro, la tarjeta de la cuadrilla, el JSON y una cita de calendario
    .owner_language = Idioma de los papeles y la página del dueño, como es-US; si no se da, inglés de EE. UU.
    .crew_language = Idioma de los papeles de la cuadrilla, como es-US; si no se da, inglés de EE. UU.
command-line-no-install = El trabajo no tiene próxima instalación. Hágala en la pestaña Instalación de la ventana.
command-line-rates = Aprende tiempos de los trabajos terminados de una carpeta
    .folder = Carpeta de archivos de trabajo
    .prices = Guarda aquí un archivo de precios con esos tiempos
command-line-papers = Guarda los papeles en PDF, la página para el dueño y un calendario
    .job = Archivo de trabajo, o una carpeta con varios para una carpeta de papeles por trabajo
    .draft = Guarda también los papeles por los que todavía no se puede responder; cada página dice entonces que es un borrador
    .keep = Guarda en el archivo del trabajo lo que dicen los papeles, para comparar con ello las visitas posteriores; el archivo se escribe de nuevo, sin comentarios
    .out = Carpeta donde se guardan; se crea si no existe
    .templates = Carpeta con sus propias plantillas; los papeles sin plantilla usan la incluida
    .owner_language = Idioma de los papeles y la página del dueño, como es-US; si no se da, inglés de EE. UU.
    .crew_language = Idioma de los papeles de la cuadrilla, como es-US; si no se da, inglés de EE. UU.
command-line-schema = Muestra el esquema JSON de “assess --json”
    .job = Muestra el esquema de los archivos de trabajo
command-line-templates = Guarda las plantillas incluidas de los papeles, para que pueda cambiarlas
    .out = Carpeta donde se guardan; las plantillas que ya están se quedan como están

command-line-no-window = no se puede abrir la ventana: { $error }
command-line-no-display = no hay pantalla para abrir una ventana; esta es la respuesta en palabras
command-line-no-language = no hay idioma “{ $tag }”; hay { $known }
command-line-no-problems = No se encontraron problemas.
command-line-file = { $name }:
command-line-progress = { $all ->
    [one] { $count } de 1 trabajo
   *[other] { $count } de { $all } trabajos
}
command-line-finished = { $all ->
    [one] { $finished ->
        [0] El trabajo no tiene horas reales.
       *[other] El trabajo tiene horas reales.
    }
   *[other] { $finished ->
        [one] 1 de { $all } trabajos tiene horas reales.
       *[other] { $finished } de { $all } trabajos tienen horas reales.
    }
}
command-line-waste = { $material }: { $waste } de desperdicio (catálogo { $start }, { $jobs ->
    [one] 1 trabajo
   *[other] { $jobs } trabajos
})
command-line-rate = { $task }: { $minutes } min por lote (catálogo { $start }, { $jobs ->
    [one] 1 trabajo
   *[other] { $jobs } trabajos
}, peso { $weight })
command-line-nothing-kept = No se guardó nada en el trabajo: todavía no hay una reparación que prometer, la obra ya está hecha o revisada, o no se pudo leer una parte del archivo.
