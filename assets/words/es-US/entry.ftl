### What is said beside a field about what was typed in it.

entry-out-of-range = “{ $text }” no está entre { $low } y { $high }. Revise la cifra y su unidad.

# $wanted is what the field holds.
entry-empty = { $wanted ->
    [length] Esto no puede quedar vacío. Escriba un largo como 5-1/8, 7' 3-1/2" o 130 mm.
    [amount] Esto no puede quedar vacío. Escriba una cantidad como 12.50.
    [number] Esto no puede quedar vacío. Escriba un número como 12 o 12.5.
   *[date] { $units ->
        [millimeters] Esto no puede quedar vacío. Escriba una fecha como 2026-02-14.
       *[inches] Esto no puede quedar vacío. Escriba una fecha como 14 feb 2026 o 2/14/2026.
    }
}

entry-not-a-length = “{ $text }” no es un largo. Escríbalo como 5-1/8, 7' 3-1/2" o 130 mm.
entry-zero-denominator = “{ $text }” divide entre cero. Escriba una fracción como 3/32.
entry-number-without-unit = “{ $text }” tiene un número sin unidad. Ponga la unidad a cada número, como 7 ft 3 in.
entry-not-one-length = “{ $text }” no es un solo largo. Escriba pies y pulgadas como 7' 3-1/2", o un número con su unidad.
entry-length-too-long = “{ $text }” es más de { $limit }, el largo máximo permitido. Revise la cifra y su unidad.
entry-unit-missing = “{ $text }” no tiene unidad. Escríbalo como 5-1/8 in o 130 mm.

entry-not-an-amount = “{ $text }” no es una cantidad de dinero. Escríbala como 12.50.
entry-amount-too-large = “{ $text }” debe ser menos de { $limit }. Revise la cantidad.

entry-not-a-number = “{ $text }” no es un número. Escriba dígitos, como 12 o 12.5.
entry-not-whole = “{ $text }” no es un número entero. Escriba solo dígitos, como 12.

entry-not-a-date = { $units ->
    [millimeters] “{ $text }” no es una fecha. Escríbala como 2026-02-14 o 14.2.2026.
   *[inches] “{ $text }” no es una fecha. Escríbala como 14 feb 2026 o 2/14/2026.
}
entry-day-missing = { $units ->
    [millimeters] “{ $text }” es un mes sin día. Escriba también el día, como 2026-02-14.
   *[inches] “{ $text }” es un mes sin día. Escriba también el día, como 14 feb 2026.
}
entry-not-a-date-or-month = { $units ->
    [millimeters] “{ $text }” no es una fecha. Escríbala como 2025-08-14, o solo el mes, como 2025-08.
   *[inches] “{ $text }” no es una fecha. Escríbala como 14 ago 2025, o solo el mes, como ago 2025.
}
entry-year-out-of-range = “{ $text }” no está entre { $first } y { $last }. Escriba un año de ese rango.

## Figures that can be read, but not be what the field holds

entry-negative-amount = “{ $text }” no puede ser negativo. Escriba 0 si no cuesta nada.
entry-negative-gap = “{ $text }” no puede ser negativo. Escriba 0 si la junta está cerrada.
entry-gap-too-wide = “{ $text }” es más de { $limit }; ninguna junta se abre tanto. Revise la cifra y su unidad.
entry-before-visit = “{ $text }” es antes de la visita del { $visited }. Escriba una fecha posterior.
entry-year-built = “{ $text }” no es un año entre { $first } y { $last }. Escríbalo como 1962, o déjelo vacío.
