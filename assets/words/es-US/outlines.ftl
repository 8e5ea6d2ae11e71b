### Outlines of rooms out of drawings and tables: what was taken, what was left out, and why a file could not be used.

outline-taken = { $count ->
    [one] Se agregó 1 contorno, medido en { $unit ->
        [mm] milímetros
        [cm] centímetros
        [m] metros
        [in] pulgadas
       *[ft] pies
    }.
   *[other] Se agregaron { $count } contornos, medidos en { $unit ->
        [mm] milímetros
        [cm] centímetros
        [m] metros
        [in] pulgadas
       *[ft] pies
    }.
}
outline-unit-assumed = El archivo no dice su unidad, así que revise un largo.

## Why a file could not be used

outline-kind = “{ $name }” no es un tipo de archivo que se pueda leer. Elija un dibujo .dxf o .svg, o una tabla de esquinas .csv.
outline-empty = El archivo está vacío. Elija otro, o guárdelo otra vez donde se hizo.
outline-too-large = El archivo tiene { $megabytes } MB; el límite es de 20 MB. Guarde solo los contornos de los cuartos.
outline-not-text = { $kind ->
    [dwg] El archivo es un dibujo DWG, que no se puede leer. Guárdelo como DXF.
    [binary-dxf] El archivo es un DXF binario, que no se puede leer. Guárdelo como DXF ASCII.
    [compressed] El archivo está comprimido. Descomprímalo, o guárdelo como SVG simple, DXF o CSV.
    [utf16] El archivo está en UTF-16, que no se puede leer. Guárdelo en UTF-8.
   *[binary] El archivo no es texto simple. Guárdelo como DXF, SVG o CSV.
}
outline-too-many-corners = El archivo tiene más de { $limit } esquinas. Deje en él solo los contornos de los cuartos.
outline-too-many-outlines = El archivo tiene más de { $limit } contornos. Deje en él solo los de los cuartos.
outline-none = No hay ningún contorno cerrado en el archivo. Dibuje cada cuarto como una línea cerrada.
outline-broken = { $format ->
    [csv] No se puede leer la tabla: { $reason }. Guárdela otra vez como CSV.
    [dxf] No se puede leer el dibujo: { $reason }. Guárdelo otra vez como DXF ASCII, o dé las esquinas en una tabla .csv.
   *[svg] No se puede leer el dibujo: { $reason }. Guárdelo otra vez como SVG simple, o dé las esquinas en una tabla .csv.
}
outline-broken-line = { $format ->
    [csv] No se puede leer la tabla en la línea { $line }: { $reason }. Guárdela otra vez como CSV.
    [dxf] No se puede leer el dibujo en la línea { $line }: { $reason }. Guárdelo otra vez como DXF ASCII, o dé las esquinas en una tabla .csv.
   *[svg] No se puede leer el dibujo en la línea { $line }: { $reason }. Guárdelo otra vez como SVG simple, o dé las esquinas en una tabla .csv.
}
outline-no-drawing = No hay dibujo SVG en el archivo. Guárdelo otra vez como SVG simple, o dé las esquinas en una tabla .csv.
outline-truncated = El dibujo se corta a la mitad. Guárdelo otra vez como SVG simple, o dé las esquinas en una tabla .csv.
outline-too-many-groups = El dibujo tiene más de { $limit } grupos. Deje en él solo los contornos de los cuartos.
outline-too-deep = El dibujo tiene grupos dentro de grupos a más de { $limit } niveles. Desagrúpelos y guárdelo otra vez como SVG simple.

## One line that is wrong

outline-row-too-long = La línea { $line } es demasiado larga para una fila: “{ $found }”. Ponga una esquina en cada fila.
outline-columns = La línea { $line } no tiene las dos columnas x, y ni las tres columnas outline, x, y: “{ $found }”. Si usa comas decimales, ponga punto y coma entre las columnas.
outline-same-columns = La línea { $line } tiene columnas distintas de la primera fila: “{ $found }”. Dé a todas las filas las mismas columnas.
outline-one-unit = La línea { $line } da unidades distintas a x y a y: “{ $found }”. Use una sola unidad para las dos.
outline-coordinate = Línea { $line }: “{ $found }” no es una coordenada. Escriba solo dígitos, como 3200 o 12.5, sin unidad.
outline-number-too-large = Línea { $line }: “{ $found }” es demasiado grande. Dibuje con números menores de 1,000,000,000.
outline-code = Línea { $line }: “{ $found }” no es un código de grupo, como debe ser cada segunda línea de un DXF. Guárdelo otra vez como DXF ASCII.
outline-length-or-angle = Línea { $line }: “{ $found }” no es un largo ni un ángulo. Guarde otra vez el dibujo como DXF ASCII.
outline-whole = Línea { $line }: “{ $found }” no es un número entero. Guarde otra vez el dibujo como DXF ASCII.

## Writing

outline-shape-corners = Una figura de la capa “{ $layer }” no se puede guardar porque un contorno necesita tres esquinas o más. Quítela, o corríjala primero.
outline-shape-measurable = Una figura de la capa “{ $layer }” no se puede guardar porque una esquina está demasiado lejos. Quítela, o corríjala primero.
outline-unwritten = No se puede guardar el dibujo: { $reason }. No se guardó nada.

## What was taken for granted or left out

outline-unknown-unit = { $unit ->
    [mm] No se puede leer la unidad del dibujo, así que sus largos se leyeron como milímetros. Revise un largo.
    [cm] No se puede leer la unidad del dibujo, así que sus largos se leyeron como centímetros. Revise un largo.
    [m] No se puede leer la unidad del dibujo, así que sus largos se leyeron como metros. Revise un largo.
    [in] No se puede leer la unidad del dibujo, así que sus largos se leyeron como pulgadas. Revise un largo.
   *[ft] No se puede leer la unidad del dibujo, así que sus largos se leyeron como pies. Revise un largo.
}
outline-no-size = El dibujo no tiene tamaño en mm, cm o in con un viewBox, así que 96 de sus unidades se leyeron como una pulgada. Revise un largo.

outline-left-open-lines = { $count ->
    [one] No se tomó en cuenta 1 línea abierta. Un contorno debe cerrar.
   *[other] No se tomaron en cuenta { $count } líneas abiertas. Un contorno debe cerrar.
}
outline-left-branched-lines = { $count ->
    [one] No se tomó en cuenta 1 línea porque más de dos se juntan en una esquina. Dibuje cada cuarto como una polilínea cerrada.
   *[other] No se tomaron en cuenta { $count } líneas porque más de dos se juntan en una esquina. Dibuje cada cuarto como una polilínea cerrada.
}
outline-left-small-shapes = { $count ->
    [one] No se tomó en cuenta 1 figura porque es demasiado pequeña o tiene menos de tres esquinas.
   *[other] No se tomaron en cuenta { $count } figuras porque son demasiado pequeñas o tienen menos de tres esquinas.
}
outline-left-far-shapes = { $count ->
    [one] No se tomó en cuenta 1 figura porque está demasiado lejos del origen del dibujo. Acérquela.
   *[other] No se tomaron en cuenta { $count } figuras porque están demasiado lejos del origen del dibujo. Acérquelas.
}
outline-left-blocks = { $count ->
    [one] No se tomó en cuenta 1 bloque. Primero explote los bloques.
   *[other] No se tomaron en cuenta { $count } bloques. Primero explote los bloques.
}
outline-left-curves = { $count ->
    [one] No se tomó en cuenta 1 spline o elipse. Convierta las curvas en polilíneas.
   *[other] No se tomaron en cuenta { $count } splines o elipses. Convierta las curvas en polilíneas.
}
outline-left-texts = { $count ->
    [one] No se tomó en cuenta 1 texto o cota.
   *[other] No se tomaron en cuenta { $count } textos o cotas.
}
outline-left-hatchings = { $count ->
    [one] No se tomó en cuenta 1 sombreado. Dibuje la línea que lo rodea.
   *[other] No se tomaron en cuenta { $count } sombreados. Dibuje las líneas que los rodean.
}
outline-left-faces = { $count ->
    [one] No se tomó en cuenta 1 sólido o cara. Dibuje la línea que lo rodea.
   *[other] No se tomaron en cuenta { $count } sólidos o caras. Dibuje las líneas que los rodean.
}
outline-left-meshes = { $count ->
    [one] No se tomó en cuenta 1 malla. Dibuje la línea que la rodea.
   *[other] No se tomaron en cuenta { $count } mallas. Dibuje las líneas que las rodean.
}
outline-left-on-sheet = { $count ->
    [one] No se tomó en cuenta 1 figura porque está en la hoja de presentación, no en el dibujo.
   *[other] No se tomaron en cuenta { $count } figuras porque están en la hoja de presentación, no en el dibujo.
}
outline-left-upright = { $count ->
    [one] No se tomó en cuenta 1 figura porque no está plana.
   *[other] No se tomaron en cuenta { $count } figuras porque no están planas.
}
outline-left-others = { $count ->
    [one] No se tomó en cuenta 1 objeto más. Solo se leen líneas, arcos, círculos y polilíneas.
   *[other] No se tomaron en cuenta { $count } objetos más. Solo se leen líneas, arcos, círculos y polilíneas.
}
outline-left-sizeless = { $count ->
    [one] No se tomó en cuenta 1 figura porque no tiene tamaño.
   *[other] No se tomaron en cuenta { $count } figuras porque no tienen tamaño.
}
outline-left-hidden = { $count ->
    [one] No se tomó en cuenta 1 figura o grupo oculto. Actívelo para leerlo.
   *[other] No se tomaron en cuenta { $count } figuras o grupos ocultos. Actívelos para leerlos.
}
outline-left-copies = { $count ->
    [one] No se tomó en cuenta 1 clon. Primero desvincule los clones.
   *[other] No se tomaron en cuenta { $count } clones. Primero desvincule los clones.
}
outline-left-texts-and-pictures = { $count ->
    [one] No se tomó en cuenta 1 texto o imagen.
   *[other] No se tomaron en cuenta { $count } textos o imágenes.
}
