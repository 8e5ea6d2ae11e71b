### Labels of what can be noted and of what figures rest on.

label-source-kind =
    { $kind ->
        [published] publicado
        [from_memory] publicado, citado de memoria
        [common_practice] práctica común, sin fuente
       *[assumption] supuesto
    }
label-coefficient-printed = { $source } ({ label-source-kind })
label-coefficient-worked-out = calculado a partir de { $source } ({ label-source-kind })
label-failure =
    { $failure ->
        [not_noted] sin anotar
        [whole] entero
        [one_side] despegado de un lado
        [split] partido a la mitad
        [paint_torn] pintura rota
       *[squeezed_out] exprimido hacia afuera
    }
label-meter-setting =
    { $setting ->
        [this_species] esta madera
        [other_species] otra madera
       *[unknown] no se sabe
    }
label-joint-kind =
    { $kind ->
        [board_edge] tabla con tabla
        [board_end] punta de tabla
        [divider] tabla con moldura divisoria
       *[perimeter] perímetro
    }
label-bead =
    { $state ->
        [pulled] Cordón estirado: { $used } de lo que aguanta su clase
        [squeezed] Cordón comprimido: { $used } de lo que aguanta su clase
        [tears_behind] El cordón empieza a romperse por detrás, donde no se ve: { $used } de lo que aguanta su clase
        [crushed_behind] Cordón sobrecargado por detrás, donde no se ve: { $used } de lo que aguanta su clase
        [torn] Cordón roto: { $used } de lo que aguanta su clase
       *[out] Cordón exprimido: { $used } de lo que aguanta su clase
    }

# Names of joints that have words in them.
joint-end = { $joint } punta { $number }
joint-side = { $section } lado { $number }
joint-edge = { $section } borde
joint-between = { $section } con { $other }
