### Later visits against what was forecast.

follow-up-nothing-measured = Todavía no se ha medido nada.
follow-up-too-soon = Es muy pronto para saber: aún faltan las semanas más secas.
follow-up-out-of-range = Esta visita es anterior a la primera o más de tres años después: no hay pronóstico para ella.
follow-up-no-forecast = El pronóstico de la primera visita no es para estas juntas tal como están ahora.
follow-up-lines =
    { $wider ->
        [0] { $of ->
            [one] La junta revisada no pasa de los { $widest } que indicamos para las semanas más secas.
           *[other] Ninguna de las { $of } juntas revisadas pasa de los { $widest } que indicamos para las semanas más secas.
        }
       *[other] { $of ->
            [one] La junta revisada pasa de los { $widest } que indicamos para las semanas más secas. Estamos buscando la razón.
           *[other] { $wider } de { $of } juntas revisadas pasaron de los { $widest } que indicamos para las semanas más secas. Estamos buscando la razón.
        }
    }
follow-up-covered = Unas tiras cubren estas juntas, así que no hay abertura que medir. Revise si alguna tira se despegó o se rajó.
follow-up-told = En nuestros documentos del { $on } ofrecimos esta reparación por { $price }: { $option }.
follow-up-told-sealing = El sellado estaba previsto para el { $day }.
follow-up-told-lasts =
    { $doubt ->
        [wide] Calculamos la probabilidad de que dure hasta el { $until } en { $chance }, y eso estaba lejos de ser seguro.
       *[known] Calculamos la probabilidad de que dure hasta el { $until } en { $chance } (rango del 90%: { $low } a { $high }).
    }
follow-up-told-nothing = Antes de estas visitas no se emitieron documentos de este trabajo, así que se comparan con lo que la primera visita por sí sola habría pronosticado.
follow-up-did-other = Lo que hicimos al final: { $option }.
follow-up-finished = El trabajo se terminó el { $on }.
follow-up-not-finished = El trabajo todavía no se ha hecho, así que el pronóstico es para las aberturas tal como están.
follow-up-forecast =
    { $side ->
        [narrower] { $of ->
            [one] { $inside ->
                [0] La abertura está fuera del rango del pronóstico: { $off } más angosta de lo esperado.
               *[other] La abertura está en el rango del pronóstico, { $off } más angosta de lo esperado.
            }
           *[other] { $inside ->
                [one] 1 de { $of } aberturas está en el rango del pronóstico; en promedio, son { $off } más angostas de lo esperado.
               *[other] { $inside } de { $of } aberturas están en el rango del pronóstico; en promedio, son { $off } más angostas de lo esperado.
            }
        }
       *[wider] { $of ->
            [one] { $inside ->
                [0] La abertura está fuera del rango del pronóstico: { $off } más ancha de lo esperado.
               *[other] La abertura está en el rango del pronóstico, { $off } más ancha de lo esperado.
            }
           *[other] { $inside ->
                [one] 1 de { $of } aberturas está en el rango del pronóstico; en promedio, son { $off } más anchas de lo esperado.
               *[other] { $inside } de { $of } aberturas están en el rango del pronóstico; en promedio, son { $off } más anchas de lo esperado.
            }
        }
    }
follow-up-forecast-holds = El pronóstico se cumple.
follow-up-forecast-fails = El pronóstico no se cumple: busque agua, un cambio en la calefacción o una especie equivocada.
follow-up-opened =
    { $of ->
        [one] { $open ->
            [0] La junta revisada no se ha abierto.
           *[other] La junta revisada se abrió.
        }
       *[other] { $open ->
            [one] 1 de { $of } juntas revisadas se abrió.
           *[other] { $open } de { $of } juntas revisadas se abrieron.
        }
    }
follow-up-opened-expected =
    { $of ->
        [one] { $open ->
            [0] La junta revisada no se ha abierto; esperábamos { $expected ->
                [0] que ninguna se abriera
               *[other] unas { $expected }
            }.
           *[other] La junta revisada se abrió; esperábamos { $expected ->
                [0] que ninguna se abriera
               *[other] unas { $expected }
            }.
        }
       *[other] { $open ->
            [one] 1 de { $of } juntas revisadas se abrió; esperábamos { $expected ->
                [0] que ninguna se abriera
               *[other] unas { $expected }
            }.
           *[other] { $open } de { $of } juntas revisadas se abrieron; esperábamos { $expected ->
                [0] que ninguna se abriera
               *[other] unas { $expected }
            }.
        }
    }
follow-up-surprise =
    { $surprise ->
        [too_many] Es más de lo que explica el azar.
        [more] Es más de lo que esperábamos, y todavía puede ser casualidad.
        [fewer] Es menos de lo esperado.
       *[as_expected] Está dentro de lo que explica el azar.
    }
follow-up-find-out = Averigüe por qué antes de volver a sellar.
follow-up-forecast-few =
    { $count ->
        [one] Una sola junta todavía dice poco.
       *[other] { $count } juntas todavía dicen poco.
    }
follow-up-forecast-missed = No es lo que pronosticamos. Estamos buscando la razón.
follow-up-checked =
    { $checked ->
        [one] Revisamos 1 de las { $sealed } juntas que sellamos; lo que encontramos abierto es el { $share } de su largo.
       *[other] Revisamos { $checked } de las { $sealed } juntas que sellamos; lo que encontramos abierto es el { $share } de su largo.
    }
follow-up-warranty =
    { $count ->
        [0] Ninguna está abierta más de { $widest }. Nuestra garantía hasta el { $until } permite { $widest }, y el { $limit } del largo.
        [one] Una está abierta más de { $widest }. Nuestra garantía hasta el { $until } permite { $widest }, y el { $limit } del largo. Volveremos a repararla sin costo.
       *[other] { $count } están abiertas más de { $widest }. Nuestra garantía hasta el { $until } permite { $widest }, y el { $limit } del largo. Volveremos a repararlas sin costo.
    }
follow-up-warranty-share = Eso es más que el { $limit } de nuestra garantía, que corre hasta el { $until }. Volveremos a repararlo sin costo.
