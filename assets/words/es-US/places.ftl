### Finding a place, and what its climate is worth.

place-choose = { $total ->
    [one] Un lugar coincide. Elíjalo si es el correcto:
   *[other] { $total } lugares coinciden. Elija uno:
}
place-nothing-typed = Escriba una ciudad, un código ZIP o coordenadas, como Flagstaff, AZ o 55401.
place-no-such-zip = No hay código ZIP { $digits }. Los números más cercanos:
place-no-such-town = Ninguna ciudad se llama “{ $text }”. Nombres parecidos:
place-no-town-at-all = Ninguna ciudad se llama “{ $text }”. Revise cómo está escrito, o escriba una ciudad más grande cercana.
place-elsewhere = { $total ->
    [one] Hay una en otra parte:
   *[other] Hay { $total } en otras partes:
}
place-off-the-globe = Esas coordenadas no están en el globo. Escriba la latitud y luego la longitud, como 44.98, -93.27.
place-tables-damaged = La lista de lugares del programa está dañada. Instale otra vez el programa, o escriba doce meses.
place-population = { $people ->
    [one] { $place }, 1 habitante
   *[other] { $place }, { $people } habitantes
}

place-stations = Clima de { $stations }; la estación más cercana está a { $distance }.
place-far = La estación meteorológica más cercana está a { $distance }. Tome el clima como una guía aproximada, o lea un archivo de clima.
place-above = Este lugar está { $height } más arriba que las estaciones de alrededor. Un archivo de clima sería más exacto.
place-below = Este lugar está { $height } más abajo que las estaciones de alrededor. Un archivo de clima sería más exacto.
place-height-unknown = No se conoce la altura de este lugar; las estaciones de alrededor están entre { $lowest } y { $highest }. Escriba la altura.
