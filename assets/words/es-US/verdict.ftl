### The verdict: three lines on top of the window and of what `assess` prints. The first line says what to
### do, the second what it costs and the chance that it lasts, in parts set apart by dots; the third how
### sure that is. While there is not enough to go on, it says what is missing.

verdict-reseal =
    { $when ->
        [on] Vuelva a sellar el { $from } con { $sealant }.
        [between] Vuelva a sellar entre el { $from } y el { $to } con { $sealant }.
       *[any_time] Vuelva a sellar en cualquier época del año con { $sealant }.
    }
verdict-reseal-fails = No vuelva a sellar con { $sealant }: las juntas se mueven más de lo que permite su clase en { $past } del largo.
verdict-too-narrow = Deje las juntas sin sellar: la mayoría se queda en menos de { $narrowest }.
verdict-replace = Cambie las tablas por nuevas secadas a { $moisture } de humedad.
verdict-as-chosen = { $option }.
verdict-done = { $option }: hecho el { $on }.
verdict-visit = { $on }: { $found }
verdict-not-possible = { $option }: aquí no es una opción.
verdict-water-first =
    { $count ->
        [one] Encuentre por dónde entra el agua en la sección { $sections } y deje secar las tablas.
       *[other] Encuentre por dónde entra el agua en las secciones { $sections } y deje secar las tablas.
    }

verdict-nothing-to-grip = El cordón no tiene de dónde agarrarse. Pinte la V, o primero abra más las juntas.
verdict-then = Después: { $option }
verdict-days =
    { $days ->
        [one] 1 día en la obra desde el { $from }
       *[other] { $days } días en la obra desde el { $from }
    }
verdict-price = { $total } ({ $low } a { $high })
verdict-lasts = { chance-percent } de probabilidad de que dure hasta { $until }
verdict-lasts-range = podría ser de { $low } a { $high }
# Where that range would be from about nothing to about all.
verdict-lasts-paint-decides = depende de la pintura
verdict-lasts-either-way = pero está lejos de ser seguro
# The same if the paint over the bead does not crack: how far paint stretches is known least of all.
verdict-lasts-paint =
    { $band ->
        [under] menos de { $chance } si la pintura no se agrieta
        [over] más de { $chance } si la pintura no se agrieta
       *[plain] { $chance } si la pintura no se agrieta
    }

verdict-confidence =
    { $confidence ->
        [not_yet] Todavía no
        [rough] Aproximado
        [fairly_sure] Bastante seguro
       *[sure] Seguro
    }
verdict-first-boards = Primero dibuje las tablas: agregue una superficie, ponga su tamaño y elija un patrón.
verdict-first-gaps = Mida unas cuantas aberturas: haga clic en una junta del dibujo y escriba su ancho.
verdict-first-fixes = Todavía no se puede calcular ninguna reparación. Corrija los datos marcados en rojo.
verdict-doubt-wrong-entries =
    { $count ->
        [one] 1 dato no se pudo usar.
       *[other] { $count } datos no se pudieron usar.
    }
verdict-doubt-typed-gaps =
    { $count ->
        [one] Una abertura es muy ancha. Cuenta como se escribió hasta que diga cuál es.
       *[other] { $count } aberturas son muy anchas. Cuentan como se escribieron hasta que diga cuáles son.
    }
verdict-doubt-water =
    { $count ->
        [one] Una sección está más húmeda de lo que causa el cuarto.
       *[other] { $count } secciones están más húmedas de lo que causa el cuarto.
    }
verdict-doubt-few-gaps =
    { $count ->
        [0] No se midió ninguna abertura en la sección { $section }.
        [one] Solo se midió 1 abertura en la sección { $section }.
       *[other] Solo se midieron { $count } aberturas en la sección { $section }.
    }
verdict-doubt-cause = Hay más de una causa posible; la más probable: { chance-percent }.
verdict-doubt-chance = No se sabe lo suficiente de esta casa: la probabilidad de que la reparación dure podría ser desde { $low } hasta { $high }.
verdict-doubt-paint = Depende de cuánto se estira la pintura sobre el sellador, y nadie lo ha medido.
verdict-doubt-place = Nadie indicó dónde está la casa, así que su clima es una suposición.
verdict-doubt-meter = Todavía no hay lectura de humedad de las tablas.
verdict-doubt-meter-room = El medidor de humedad y el aire del cuarto no coinciden.
verdict-doubt-install-date = Todavía no hay fecha de instalación.
verdict-doubt-hours = Las horas son del catálogo, no medidas aquí.
verdict-cheaper = “{ $option }” costaría menos, con las visitas de regreso incluidas.
verdict-nothing-left = Nada de lo que falta por medir cambiaría esto.
verdict-helps-most = Lo que más ayudaría:
