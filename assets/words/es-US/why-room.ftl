### The Why room: what opened the joints, section by section.

why-nothing-measured = La causa aparece cuando hay una abertura medida. Haga clic en una junta y escriba su ancho.
why-heading = Por qué se abrieron las juntas
why-method = De todas las lecturas juntas: probamos miles de historias posibles, y cuentan más las que cuadran con las aberturas, el medidor y el cuarto. Los rangos aciertan 9 de cada 10 veces.

## The causes

why-causes = Probabilidad de cada causa
why-cause-chance = { cause-label }: { chance-percent }
why-causes-remark = Las tablas húmedas y el movimiento normal se excluyen entre sí; las otras causas pueden venir con cualquiera. Qué tan común es cada causa antes de medir es un supuesto.
why-clues = Pistas
why-clue-for =
    { $size ->
        [over] A favor: { cause-label } (probabilidad × más de { $factor })
       *[plain] A favor: { cause-label } (probabilidad × { $factor })
    }
why-clue-against =
    { $size ->
        [over] En contra: { cause-label } (probabilidad ÷ más de { $factor })
       *[plain] En contra: { cause-label } (probabilidad ÷ { $factor })
    }
why-clue-neither = No apunta a ninguna causa en particular.

## All joints together

why-all-joints = Todas las juntas juntas
why-opening = Abertura total
    .hint = Abertura por largo de cada junta entre tablas, medida o no, con su rango del 90%
why-opening-range = { $opening } ± { $within }
why-known-to = Se conoce con
    .hint = La mitad de ese rango. Con más lecturas se hace más angosto.
why-known-within = ± { $share }
why-readings-enough = Para eso ya midió suficientes aberturas.
why-readings-more =
    { $more ->
        [one] Basta una lectura más. Tómela en { $joint }.
       *[other] Bastan { $more } lecturas más. Empiece en { $joint }.
    }
why-readings-never = Las juntas son demasiado distintas para eso. Mida ahora { $joint }.

## A section

why-section = { $surface }, sección { $section }
why-mean-gap = Abertura promedio
    .hint = De las juntas entre tablas
why-mean-gap-value =
    { $joints ->
        [one] { $mean } ± { $error }, la única junta medida
       *[other] { $mean } ± { $error }, { $measured } de { $joints } juntas medidas
    }
why-boards-today = Tablas hoy
    .hint = Su contenido de humedad
why-boards-today-value =
    { $readings ->
        [0] cerca de { $moisture } por el aire del cuarto en el año; sin lecturas
        [one] { $moisture } ± { $error }, 1 lectura
       *[other] { $moisture } ± { $error }, { $readings } lecturas
    }
why-boards-at-install = Tablas al instalar
    .hint = La humedad desde la que, al secarse hasta hoy, se forma esta abertura
why-boards-at-install-value = { $moisture } ({ $low } a { $high })
why-beyond-drying = ninguna humedad explica esta abertura
why-room-range = Rango en este cuarto
    .hint = Lo más seco y lo más húmedo que este cuarto pone las tablas en un año
why-room-range-value = { $driest } a { $wettest }
why-closes = Se cierra sola
    .hint = Cuánto de la abertura de hoy se cierra en la próxima temporada húmeda
why-closes-none = nada: hoy es cuando más angosta está
why-closes-part = { $share }, hasta { $left } para el { $by }
why-closes-whole = toda, para el { $by }
why-drying = Falta por secar
    .hint = Cuánto está la humedad de hoy por encima de la que este cuarto le daría en esta temporada, y cuánto tarda en secarse el 90% de eso
why-drying-value =
    { $left ->
        [dries] { $within ->
            [known] { $days ->
                [one] { $moisture }, el 90% de eso en 1 día
               *[other] { $moisture }, el 90% de eso en { $days } días
            }
           *[long] { $moisture }, en más de tres años
        }
        [takes_up] { $within ->
            [known] { $days ->
                [one] nada: van a tomar { $moisture }, el 90% de eso en 1 día
               *[other] nada: van a tomar { $moisture }, el 90% de eso en { $days } días
            }
           *[long] nada: van a tomar { $moisture }, en más de tres años
        }
       *[settled] nada: ya se asentaron
    }
why-lag = Atraso tras la humedad del cuarto
    .hint = Cuántos días van las tablas detrás del vaivén anual del aire. La pintura y el grueso lo hacen más lento.
why-lag-value =
    { $days ->
        [one] 1 día
       *[other] { $days } días
    }
why-lag-none = casi sin vaivén en el año
why-widest = Más abierta
    .hint = En el próximo año, si no se hace nada
why-marks = Lo que permiten los sellos
why-mark-most = { $most } como máximo
why-mark-source = { $source } ({ label-source-kind })
