### Repair options: why one is out of the question, which is best, where rates and prices are from.

option-not-possible =
    { $reason ->
        [no_open_joints] No se sabe de ninguna junta abierta.
        [past_tongue] Las juntas se abren hasta { $widest }, más que la lengüeta: una línea abierta sería un hueco.
        [too_fine_for_spline] La abertura más ancha, { $widest }, es demasiado angosta para un listón pegado.
        [wide_enough] Todas las juntas ya son tan anchas como la junta ensanchada.
        [glued_wet] Las tablas están húmedas: si se pegan ahora, se rompen al secarse.
        [relaid_wet] Las tablas están húmedas: si se ponen juntas ahora, se abren otra vez al secarse.
        [strips_too_close] Las juntas están a solo { $widest } una de otra: con tapajuntas tan seguidos se ve más tapajuntas que tabla.
       *[stock_too_short] La tabla más larga mide { $widest }, y ningún largo de compra alcanza. Agregue uno más largo en Precio, en Materiales, o permita juntas de tope.
    }

option-only-sections =
    { $count ->
        [one] Esto es solo para la sección { $sections }, donde se abrieron casi todas las juntas. Las demás tablas no se quitan; solo se pintan.
       *[other] Esto es solo para las secciones { $sections }, donde se abrieron casi todas las juntas. Las demás tablas no se quitan; solo se pintan.
    }
option-best = “{ $best }” es la que menos cuesta con los reclamos incluidos, cerca de { $cost }.
option-best-and-next = “{ $best }” es la que menos cuesta con los reclamos incluidos, cerca de { $cost }. Sigue “{ $next }” con cerca de { $next_cost }.
option-equal = “{ $best }” { $why ->
    [surer] es la más segura de durar
   *[calmer] es la que menos molesta en la casa
} y cuesta cerca de { $cost } con los reclamos incluidos. Estas cuestan lo mismo, hasta donde se puede saber: { $others }.
option-equal-and-more = “{ $best }” { $why ->
    [surer] es la más segura de durar
   *[calmer] es la que menos molesta en la casa
}; cuesta cerca de { $cost } con los reclamos incluidos, unos { $more } más que la más barata. Estas cuestan casi lo mismo: { $others }.
option-margin = “{ $next }” costaría menos si la opción de arriba costara { $amount } ({ $share }) más.
option-margin-or-slower = “{ $next }” costaría menos si la opción de arriba costara { $amount } ({ $share }) más, o si “{ $task }” tomara { $times } veces más tiempo.
option-other-warranty =
    { $span ->
        [longer] { $years ->
            [one] Con una garantía de 1 año o más, “{ $option }” sería la que menos cuesta.
           *[other] Con una garantía de { $years } años o más, “{ $option }” sería la que menos cuesta.
        }
       *[shorter] { $years ->
            [one] Con una garantía de 1 año, “{ $option }” sería la que menos cuesta.
           *[other] Con una garantía de { $years } años o menos, “{ $option }” sería la que menos cuesta.
        }
    }

option-rate-done = La sección medida { $section }, con los minutos que tomó.
option-rate-own = Su propio tiempo.
option-rate-source = { $source } ({ label-source-kind }).
option-rate-no-source = Tiempo del catálogo ({ label-source-kind }).
option-rate-condition = { $condition }: tiempo × { $factor }
option-rate-here = { $source } Aquí: { $conditions }.
option-rate-timed = Su sección medida { $section }: { $minutes } por lote, peso { $weight }. Tiempo del catálogo: { $start } por lote, peso { $rest }.

option-step-coat = Mano { $number }
option-step-wait =
    { $wait ->
        [primer] Seca el imprimador
        [sealant] Cura el sellador
        [recoat] Seca la pintura
        [acclimation] Las tablas se aclimatan al cuarto
       *[season] Esperar las mejores semanas para sellar
    }

option-task-unit =
    { $per ->
        [visit] { $count ->
            [one] visita
           *[other] visitas
        }
        [section] { $count ->
            [one] sección
           *[other] secciones
        }
        [joint_run] { $units ->
            [inches] pies de junta
           *[millimeters] m de junta
        }
        [bead_run] { $units ->
            [inches] pies de junta
           *[millimeters] m de junta
        }
        [backed_run] { $units ->
            [inches] pies de junta con respaldo
           *[millimeters] m de junta con respaldo
        }
        [painted_area] { $units ->
            [inches] pies² pintados
           *[millimeters] m² pintados
        }
        [coated_area] { $units ->
            [inches] pies² pintados, cada mano
           *[millimeters] m² pintados, cada mano
        }
        [coated_grooves] { $units ->
            [inches] pies de ranura, cada mano
           *[millimeters] m de ranura, cada mano
        }
        [angled_end] { $count ->
            [one] punta cortada en ángulo
           *[other] puntas cortadas en ángulo
        }
        [boarded_area] { $units ->
            [inches] pies² de tablas
           *[millimeters] m² de tablas
        }
        [board] { $count ->
            [one] tabla
           *[other] tablas
        }
        [opening] { $count ->
            [one] vano
           *[other] vanos
        }
        [window] { $count ->
            [one] ventana o puerta
           *[other] ventanas y puertas
        }
        [fixture] { $count ->
            [one] lámpara o rejilla
           *[other] lámparas y rejillas
        }
        [coat] { $count ->
            [one] mano
           *[other] manos
        }
        [day] { $count ->
            [one] día en la obra
           *[other] días en la obra
        }
        [person_day] { $count ->
            [one] día-persona
           *[other] días-persona
        }
        [evening] { $count ->
            [one] tarde
           *[other] tardes
        }
        [standby] { $count ->
            [one] hora
           *[other] horas
        }
        [trim_run] { $units ->
            [inches] pies de moldura
           *[millimeters] m de moldura
        }
        [board_run] { $units ->
            [inches] pies de tabla
           *[millimeters] m de tabla
        }
       *[outline_run] { $units ->
            [inches] pies de contorno
           *[millimeters] m de contorno
        }
    }
option-material-unit =
    { $per ->
        [job] { $count ->
            [one] trabajo
           *[other] trabajos
        }
        [visit] { $count ->
            [one] visita
           *[other] visitas
        }
        [painted_area] { $units ->
            [inches] pies² pintados
           *[millimeters] m² pintados
        }
        [covered_area] { $units ->
            [inches] pies² cubiertos
           *[millimeters] m² cubiertos
        }
        [boarded_area] { $units ->
            [inches] pies² de tablas
           *[millimeters] m² de tablas
        }
        [outline_run] { $units ->
            [inches] pies de contorno
           *[millimeters] m de contorno
        }
        [board_run] { $units ->
            [inches] pies de tabla
           *[millimeters] m de tabla
        }
        [board_volume] { $units ->
            [inches] pies³ de tabla vieja
           *[millimeters] m³ de tabla vieja
        }
        [section] { $count ->
            [one] sección
           *[other] secciones
        }
        [joint_run] { $units ->
            [inches] pies de junta
           *[millimeters] m de junta
        }
        [bead_run] { $units ->
            [inches] pies de junta
           *[millimeters] m de junta
        }
        [board] { $count ->
            [one] tabla
           *[other] tablas
        }
        [week] { $count ->
            [one] semana
           *[other] semanas
        }
       *[backed_run] { $units ->
            [inches] pies de junta con respaldo
           *[millimeters] m de junta con respaldo
        }
    }
option-material-can = { $name }, bote de { $size }
option-material-board = { $name }, { $length } de largo
option-material-load = { $name }, por { $size }
option-material-run = { $name }, por { $length }
option-material-strip = { $name }, { $thick } × { $wide }, por { $length }

option-offer-own = Su propio precio.
option-offer-source = { $source } ({ label-source-kind }).
option-offer-class = { $source }.
option-offer-date = Precio del { $date }.
option-offer-no-date = Precio sin fecha.
