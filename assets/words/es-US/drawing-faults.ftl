### What is wrong with a drawing, and what to do about it.

drawing-too-few-corners = El contorno { $corners ->
        [0] no tiene esquinas
        [one] solo tiene 1 esquina
       *[other] solo tiene { $corners } esquinas
    }.
    .fix = Ponga por lo menos tres esquinas, en orden alrededor del borde. Mientras tanto, no se toma en cuenta.
drawing-no-area = Las esquinas no encierran ningún área.
    .fix = Separe las esquinas. Mientras tanto, no se toma en cuenta.
drawing-crosses-itself = El borde se cruza consigo mismo.
    .fix = Ponga las esquinas en orden alrededor del borde. Mientras tanto, no se toma en cuenta.
drawing-opening-outside = “{ $name }” queda fuera del contorno.
    .fix = Muévala adentro o quítela. Mientras tanto, no recorta nada.
drawing-divider-outside = “{ $name }” no cubre nada de la superficie.
    .fix = Póngale un ancho y dos puntas dentro del contorno.
drawing-divider-ends-inside = “{ $name }” termina dentro de la sección “{ $section }”.
    .fix = Arrastre su punta hasta el borde o hasta otra moldura divisoria. Mientras tanto, las tablas siguen de largo.
drawing-bare = { $area } de la superficie no están en ninguna sección y no tienen tablas.
    .fix = Mueva las esquinas de las secciones vecinas, o recórtelo como ventana o puerta.
drawing-two-joints-alike = Dos juntas se llamarían “{ $label }”.
    .fix = Cambie el nombre de la sección, moldura divisoria, ventana o puerta que las hace iguales. Use letras, no un número.
drawing-nothing-to-board = La sección “{ $section }” no tiene área para tablas.
    .fix = Dibújela dentro del contorno, sin tocar molduras, ventanas ni puertas. Mientras tanto, no se calcula.
drawing-too-many-boards = La sección “{ $section }” tendría más tablas de las que se pueden dibujar.
    .fix = Revise el ancho de cara. Mientras tanto, la sección no se calcula.
drawing-too-many-pieces = Con tablas de { $longest } como máximo serían más de las que se pueden dibujar.
    .fix = Escriba el largo de la tabla más larga que puede comprar, o déjelo vacío. Mientras tanto, cada tramo es una sola tabla.
drawing-narrower-than-a-board = La sección “{ $section }” solo mide { $width } de ancho, menos que una tabla de { $face }.
    .fix = Revise el ancho de cara y la dirección. Mientras tanto, lleva una sola tabla cortada a lo largo.
drawing-no-tongue = El ancho total de { $overall } es menos que el ancho de cara de { $face }.
    .fix = El ancho total incluye la lengüeta. Mientras tanto, las tablas cuentan como si no tuvieran lengüeta.
drawing-overlap = La sección “{ $section }” se encima con la sección “{ $other }”, y las tablas de ahí se cuentan dos veces.
    .fix = Mueva una esquina de una de las dos.
