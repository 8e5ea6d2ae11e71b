### Why the joints opened: the causes, their chances, the clues.

cause-label =
    { $cause ->
        [wet_at_install] Tablas demasiado húmedas al instalar
        [seasonal] Movimiento normal de las temporadas
        [weak_sealant] El sellador falló antes de lo que marca su clase
        [framing_moved] Se movió la estructura o la fijación
        [wetted_and_dried] Tablas que se mojaron
       *[bonded_groups] Tablas pegadas en grupos
    }
cause-explained =
    { $cause ->
        [wet_at_install] Las tablas se secaron al nivel del cuarto y cada una dejó una abertura tan ancha como lo que encogió.
        [seasonal] Las tablas que estaban secas al instalarse se angostan en los meses secos y se ensanchan otra vez en los húmedos.
        [weak_sealant] Cualquier buen cordón aguanta este movimiento, pero este falló con aberturas pequeñas.
        [framing_moved] Una junta está mucho más abierta que las de al lado: se movió la estructura o la fijación que tiene detrás.
        [wetted_and_dried] Las tablas que se mojan se hinchan, se aplastan los cantos entre sí y dejan aberturas más anchas al secarse.
       *[bonded_groups] La pintura o el sellador mantiene pegadas varias tablas: el movimiento de todas se ve en una sola junta y las demás quedan cerradas.
    }

chance-percent =
    { $band ->
        [over] más de { $percent }
        [under] menos de { $percent }
       *[plain] { $percent }
    }

cause-clue-mean-gap = { $several ->
    [yes] En la sección { $section }, la abertura promedio es de { $mean }; si las tablas hubieran estado secas al instalarse, hoy sería de { $dry }.
   *[no] La abertura promedio es de { $mean }; si las tablas hubieran estado secas al instalarse, hoy sería de { $dry }.
}
cause-clue-pattern =
    { $closed ->
        [0] De { $measured } juntas medidas entre tablas, ninguna está cerrada; la abertura más ancha es de { $widest }.
        [one] De { $measured } juntas medidas entre tablas, 1 está cerrada; la abertura más ancha es de { $widest }.
       *[other] De { $measured } juntas medidas entre tablas, { $closed } están cerradas; la abertura más ancha es de { $widest }.
    }
cause-clue-moisture = { $several ->
    [yes] En la sección { $section }, corregidas por la temperatura de la madera, las lecturas del medidor dan { $now }, más o menos lo que tendrían las tablas en este cuarto.
   *[no] Corregidas por la temperatura de la madera, las lecturas del medidor dan { $now }, más o menos lo que tendrían las tablas en este cuarto.
}
cause-clue-moisture-differs = { $several ->
    [yes] En la sección { $section }, corregidas por la temperatura de la madera, las lecturas del medidor dan { $now }; en este cuarto las tablas tendrían { $room }.
   *[no] Corregidas por la temperatura de la madera, las lecturas del medidor dan { $now }; en este cuarto las tablas tendrían { $room }.
}
cause-clue-room = El higrómetro marcó { $humidity } de humedad en el cuarto.
cause-clue-failures =
    { $failure ->
        [one_side] { $count ->
            [one] 1 cordón se despegó de un lado.
           *[other] { $count } cordones se despegaron de un lado.
        }
        [split] { $count ->
            [one] 1 cordón se partió a la mitad.
           *[other] { $count } cordones se partieron a la mitad.
        }
        [paint_torn] { $count ->
            [one] La pintura se rompió sobre 1 cordón.
           *[other] La pintura se rompió sobre { $count } cordones.
        }
        [squeezed_out] { $count ->
            [one] 1 cordón se exprimió hacia afuera.
           *[other] { $count } cordones se exprimieron hacia afuera.
        }
       *[whole] { $count ->
            [one] 1 cordón está entero.
           *[other] { $count } cordones están enteros.
        }
    }

cause-mark-driest =
    { $surely ->
        [yes] Las tablas estaban tan secas como promete el sello { $meets }.
       *[no] Las tablas probablemente estaban tan secas como promete el sello { $meets }.
    }
cause-mark-between =
    { $surely ->
        [yes] Las tablas estaban dentro de lo que permite el sello { $meets }, pero más húmedas que { $misses }.
       *[no] Las tablas estaban dentro de lo que permite el sello { $meets }, pero probablemente más húmedas que { $misses }.
    }
cause-mark-stamped =
    { $meets ->
        [yes] { $surely ->
            [yes] Las tablas estaban tan secas como promete su sello { $mark }.
           *[no] Las tablas probablemente estaban tan secas como promete su sello { $mark }.
        }
       *[no] { $surely ->
            [yes] Las tablas estaban más húmedas de lo que permite su sello { $mark }.
           *[no] Las tablas probablemente estaban más húmedas de lo que permite su sello { $mark }.
        }
    }
cause-mark-green =
    { $surely ->
        [yes] Las tablas eran madera verde: más húmedas de lo que permite { $misses }.
       *[no] Las tablas eran probablemente madera verde: más húmedas de lo que permite { $misses }.
    }
