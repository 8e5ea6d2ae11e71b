### Labels of everything that is entered into a job, with hints where one helps.
### Units stand after an entry, not in its label.

## The job

field-title = Nombre del trabajo
field-owner = Dueño
field-address = Dirección
field-firm = Empresa
field-firm-details = Dirección y teléfono
    .hint = Como deben aparecer en la carta
field-firm-signs = Firma
field-logo = Logotipo
    .hint = Va en la parte de arriba de los papeles. PNG, JPEG o SVG.
field-wording = Texto de la carta
    .hint = Una línea por cada frase o punto. Las cifras que usted escribe encima ya no siguen al trabajo.
field-notes = Notas
    .hint = Para usted. No se imprimen en ningún papel.
field-units = Unidades
field-year-built = Año de construcción
    .hint = Decide qué notas de seguridad aplican. Déjelo vacío si no se sabe.
field-installed = Tablas instaladas
    .hint = El día en que se instalaron las tablas. Ahí empieza la línea de tiempo.
field-visited = Fecha de visita
    .hint = El día en que midió las aberturas y la humedad

## Surfaces

field-surface-name = Nombre de la superficie
field-surface-kind = Tipo
field-outline = Contorno
    .hint = Si los largos están en pulgadas, aquí un número solo son pies. Escriba 9" para pulgadas.
field-trim = Moldura perimetral
    .hint = Ancho de la moldura alrededor. 0 si no hay.
field-opening-name = Nombre de la ventana o puerta
field-opening = Ventana o puerta
    .hint = Esquinas de una ventana, puerta o tragaluz, en orden
field-divider-name = Nombre de la moldura divisoria
field-divider-kind = Tipo de moldura divisoria
field-divider = Moldura divisoria
    .hint = Las dos puntas de una tabla que divide la superficie
field-divider-width = Ancho de la moldura divisoria
field-section-name = Nombre de la sección
field-region = Esquinas de la sección
field-photos = Fotos
    .hint = Puestas donde se tomaron
field-north = Norte
    .hint = Dónde queda el norte en el dibujo: 0° es a la derecha, 90° es arriba. Déjelo vacío si no importa.
field-window-walls = Paredes con ventanas
    .hint = Las tablas cerca de las ventanas son las que más se secan y se calientan

## Boards

field-species = Especie
    .hint = Determina cuánto se mueve la madera
field-thickness = Grueso
field-overall-width = Ancho total
    .hint = Ancho de cara más la lengüeta. Una abertura casi tan ancha como la lengüeta ya no se arregla con sellador.
field-face-width = Ancho de cara
    .hint = El ancho que se ve, sin la lengüeta
field-profile = Perfil del canto
    .hint = Una V donde se juntan dos chaflanes, un bocel o canto recto
field-profile-size = Tamaño del perfil
    .hint = Ancho de un chaflán o del bocel
field-grain = Veta
    .hint = Ángulo de los anillos de crecimiento con la cara: 0° es corte plano y se mueve más, 90° es corte radial. Las tablas mezcladas andan cerca de 25°.
field-nailing = Clavado
    .hint = Dónde va clavada cada tabla decide qué junta muestra su movimiento
field-finish = Pintura
    .hint = Cuánta humedad la atraviesa
field-backing = Detrás
    .hint = Con aire, también se seca la parte de atrás. Con tablarroca o yeso pegado a las tablas, no.
field-max-length = Largo máximo
    .hint = Los tramos más largos llevan juntas de tope. Déjelo vacío si cada tramo es una sola tabla.
field-direction = Dirección
    .hint = Cómo corren las tablas: 0° es a la derecha, 90° es arriba
field-starter-rip = Primera tabla
    .hint = Ancho de la primera tabla cortada a lo largo. 0 para empezar con una tabla entera.

## Readings

field-precision = Precisión deseada
    .hint = Con qué exactitud quiere conocer la abertura total. Determina cuántas aberturas medir.
field-gap-joint = Junta
field-gap-width = Abertura
    .hint = 0 si la junta está cerrada. Eso también es una lectura.
field-gap-date = Fecha de la abertura
    .hint = Solo si no fue el día de la visita
field-gap-failure = Falla del sellador
    .hint = Cómo falló el sellador en esta junta
field-meter-section = Sección
field-meter-board = Tabla
    .hint = Cuál tabla, para poder encontrarla otra vez
field-meter-reading = Lectura del medidor
    .hint = Lo que marca el medidor de humedad
field-meter-setting = Ajuste del medidor
    .hint = La especie en que está puesto el medidor
field-wood-temperature = Temperatura de la madera
    .hint = El medidor marca de más en madera caliente y de menos en madera fría
field-meter-date = Fecha de la lectura
    .hint = Solo si no fue el día de la visita
field-room-temperature = Temperatura del cuarto
field-room-humidity = Humedad del cuarto
field-room-date = Fecha de la lectura del cuarto
    .hint = Solo si no fue el día de la visita

## The room

field-air-source = Aire del cuarto según
    .hint = El clima del lugar y la casa, un archivo de clima o doce meses escritos a mano
field-place = Ciudad, código ZIP o coordenadas
    .hint = El clima viene de las estaciones meteorológicas de alrededor
field-elevation = Altura
    .hint = Solo si está mucho más arriba o más abajo que las ciudades de alrededor. Si los largos están en pulgadas, un número solo son pies.
field-weather-file = Archivo de clima
    .hint = Un año de clima por hora: EPW o TMY3
field-heat-setpoint = Calefacción puesta en
field-ac-setpoint = Aire acondicionado en
field-humidity-by = Humedad según
    .hint = La humedad que agrega la casa y sus ajustes, o una clase de humedad de EN 15026
field-moisture-load = Humedad que agrega la casa
    .hint = Agua que la gente, las plantas, la cocina y la ropa agregan al aire en invierno. { $units ->
        [inches] De 0.9 a 1.8 gr/pie³ es lo usual; 2.6 es una casa húmeda
       *[millimeters] De 2 a 4 g/m³ es lo usual; 6 es una casa húmeda
    }. En verano, con ventanas abiertas, no se queda nada.
field-dehumidifier = Deshumidificador puesto en
    .hint = Lo mantiene el aire acondicionado o un deshumidificador. Déjelo vacío si no hay ninguno.
field-humidifier = Humidificador puesto en
    .hint = Déjelo vacío si no hay
field-month-temperature = Temperatura del mes
field-month-humidity = Humedad del mes
field-logger = Registrador de datos
    .hint = Lecturas de este cuarto, en CSV

## The repair

field-option = Opción de reparación
field-sealant = Sellador
    .hint = Su clase dice cuánto puede abrirse o cerrarse la junta, en por ciento de su ancho al sellar
field-primer = Imprimador
field-paint = Pintura de acabado
field-coats = Manos de pintura
field-scope = Juntas por sellar
field-open-threshold = Cuenta como abierta desde
    .hint = Una junta de por lo menos este ancho cuenta como abierta
field-min-sealable-gap = Abertura mínima para sellar
    .hint = En una más angosta, el sellador no tiene de dónde agarrarse
field-sealing-date = Fecha de sellado
    .hint = Primer día de sellado. Déjelo vacío para usar las mejores semanas.
field-bead-depth = Grueso del cordón en la ranura
    .hint = El cordón es tan grueso como ancha la abertura, pero por lo menos esto
field-v-fill = V llena
    .hint = Parte de la V que llena el sellador. El resto queda a la vista.
field-sealant-waste = Desperdicio de sellador
    .hint = Sellador que se pierde en los cartuchos y al alisar, además del que entra en las juntas
field-crew-size = Tamaño de la cuadrilla
field-hours-per-day = Horas pagadas por día
    .hint = Por persona, con el viaje y sin la comida
field-start-time = Hora de llegada
    .hint = Cuándo llega la cuadrilla: 8:00 AM, o solo 8
field-lunch = Hora de comida
    .hint = No se paga
field-stay-late = Se queda hasta
    .hint = Para terminar, en lugar de volver otro día
field-windows = Ventanas y puertas
    .hint = Que hay que cubrir antes de rociar
field-fixtures = Lámparas y rejillas
    .hint = Que hay que bajar o cubrir
field-evenings = El cuarto en la tarde
    .hint = Entregar el cuarto toma tiempo cada día
field-lead-paint = Pintura con plomo
    .hint = Antes de 1978, o si no se sabe el año, se cobra trabajo seguro con plomo cuando se tocan más de 6 pies cuadrados de pintura
field-guns = Pistolas de sellador
    .hint = Los cartuchos y las salchichas no usan la misma pistola
field-delivered-at = Humedad al entregar
    .hint = Lo que marca el medidor cuando llegan las tablas nuevas
field-acclimation = Aclimatación
    .hint = Cuánto tiempo están las tablas nuevas en el cuarto antes de instalarse
field-waste-factor = Factor de desperdicio
    .hint = Parte de cada tabla nueva que se pierde por nudos y otros defectos
field-stock-lengths = Largos de compra
    .hint = Largos en que se venden las tablas, separados con punto y coma
field-kerf = Corte de sierra
    .hint = Ancho del corte de la sierra
field-end-trim = Despunte
    .hint = Lo que se corta de cada tabla antes de usarla, las dos puntas juntas
field-two-visits = Dos visitas
    .hint = Abrir e imprimar las juntas ahora; sellarlas en las mejores semanas
field-workdays = Días de trabajo
field-access = Acceso
    .hint = Con escaleras y andamios, toda tarea en las tablas toma más tiempo
field-old-caulk = Sellador viejo
    .hint = El duro hay que cortarlo dos veces; el blando se embarra
field-room-state = Cuarto
    .hint = Los muebles y el acceso estrecho hacen más lento el trabajo
field-timed-section = Sección medida
    .hint = Raspe una sección con reloj. El resto del trabajo sigue ese paso.
field-timed-minutes = Minutos medidos
    .hint = Minutos de una persona
field-charge-timed = Cobrar la sección medida
    .hint = Ya está hecha y es parte del trabajo
field-own-minutes = Sus tiempos por tarea
    .hint = Déjelo vacío para usar el tiempo del catálogo
field-warranty = Garantía
    .hint = Durante estos años, un reclamo va por su cuenta
field-callback-share = Reclamo si se abre esta parte
    .hint = El dueño reclama cuando está abierta esta parte del largo de las juntas
field-callback-gap = Reclamo por una abertura de más de
    .hint = El dueño reclama por una sola abertura así de ancha
field-smallest-visible-gap = Abertura mínima que se ve
    .hint = Una más angosta no la ve nadie

## Pricing

field-currency = Moneda
field-charging = Cobramos
    .hint = Una tarifa con todo incluido, o el sueldo con cargas, gastos generales y ganancia aparte
field-charge-out = Tarifa por hora
    .hint = Lo que paga el dueño por la hora de una persona, todo incluido
field-material-markup = Recargo en materiales
    .hint = Sobre materiales y equipo, con una tarifa por hora
field-wage = Sueldo del pintor
    .hint = Lo que gana un pintor por hora. Para poner lo que usted cobra, elija “una tarifa por hora”.
field-carpenter-wage = Sueldo del carpintero
    .hint = Lo que gana un carpintero por hora
field-labor-burden = Cargas laborales
    .hint = Impuestos, seguros y días pagados, además del sueldo
field-equipment = Equipo por día
    .hint = Rociadora, luces, plataformas: renta o desgaste de un día
field-overhead = Gastos generales
    .hint = Oficina, vehículos, tiempo muerto: sobre mano de obra, materiales y equipo
field-profit = Recargo de ganancia
    .hint = Sobre el costo. El margen, que es parte del precio, es menor.
field-contingency = Imprevistos
    .hint = Se suman al precio para cubrir el costo con esta probabilidad. Déjelo vacío si no se quieren.
field-add-callbacks = Reclamos
    .hint = Si el precio incluye lo que se espera que cuesten los reclamos en la garantía
field-minimum-charge = Cobro mínimo
    .hint = Lo menos por lo que usted va, antes de impuesto
field-tax = Impuesto de venta
field-tax-on = Impuesto sobre
field-round-to = Redondear a
field-deposit = Anticipo
    .hint = Parte del total que se paga antes de empezar
field-discount-rate = Tasa de descuento
    .hint = Cuánto menos cuenta un costo dentro de un año que el mismo costo hoy
field-contractor-share = Paga el contratista
    .hint = La parte del precio que usted cubre, por cortesía
field-supplier-share = Se le pide al proveedor
    .hint = La parte del precio que usted le pide al proveedor. Mientras el proveedor no acepte, es solo un reclamo.
field-line-split = División por concepto
    .hint = Partes de un solo concepto del precio
field-on-hand = Hay
    .hint = Piezas que usted ya tiene; solo se compra el resto
field-own-prices = Sus precios
    .hint = Déjelo vacío para usar el precio del catálogo
field-book-boards = Tablas de este trabajo
field-book-sealants = Selladores de este trabajo
field-book-paints = Pinturas de este trabajo
field-book-materials = Materiales de este trabajo
field-book-tasks = Tareas de este trabajo
field-book-methods = Sus opciones de reparación
field-price-book = Precios de este trabajo
    .hint = Se guardan con el trabajo, así que nunca cambian solos

## Follow-up

field-finished = Terminado el
    .hint = Último día del trabajo. Las visitas posteriores revisan los cordones nuevos.
field-actual-hours = Horas reales
field-pieces-used = Piezas usadas
field-work-notes = Notas del trabajo
field-visit-date = Fecha de la visita posterior
field-later-joint = Junta en una visita posterior
field-later-gap = Abertura en una visita posterior
    .hint = 0 si la junta está cerrada. Déjelo vacío hasta medirla.

## The next install

field-next-species = Especie
field-next-thickness = Grueso
field-next-overall-width = Ancho total
    .hint = Con la lengüeta
field-next-face-width = Ancho de cara
    .hint = Lo que se ve cuando las tablas están puestas
field-next-profile = Perfil del canto
field-next-profile-size = Tamaño del perfil
    .hint = Lado de la V, o ancho del bocel
field-next-grain = Veta
    .hint = Ángulo de los anillos de crecimiento con la cara: 0 es corte plano, 90 es corte radial. Las tablas mezcladas andan cerca de 25.
field-next-nailing = Clavado
field-next-finish = Pintura
field-next-backing = Detrás
field-next-length = Largo de las tablas
field-next-count = Tablas
    .hint = Cuántas tablas trae la entrega
field-next-joints = Juntas
    .hint = Si las juntas quedan abiertas como líneas de sombra o se sellan
field-next-finished = Se pintan
    .hint = Si las tablas se pintan antes o después de colgarlas
field-next-chance = Probabilidad pedida
    .hint = Qué tan seguro quiere estar de que ninguna junta pase el límite del dueño y de que las tablas no se pandeen. 95% es 19 de cada 20 veces.
field-next-gap = Separación que se deja
    .hint = Déjelo vacío para usar la recomendada
field-next-wanted = Colgar el
    .hint = El día en que quiere colgar las tablas
field-supplier = Proveedor
field-delivery-date = Entregadas
    .hint = Déjelo vacío si es el día de la visita
field-promised = Máximo prometido
    .hint = La mayor humedad que permite el sello o el papel de entrega, como 19% con S-DRY o 15% con KD 15
field-gate-setting = Medidor puesto en
field-piling = Apiladas
field-stack-kept = Guardadas en
field-checked-by = Midió
field-hung = Colgadas el
field-stack-board = Tabla
field-stack-reading = Lectura
field-stack-wood = Temperatura de la madera
field-pin-depth = Profundidad de las agujas
    .hint = Hasta dónde entraron las agujas. A un cuarto del grueso de la tabla se lee su promedio.
field-stack-date = Fecha de la lectura
    .hint = Déjelo vacío si es el día de la entrega
