### The build-up of a price.

price-line =
    { $line ->
        [labour] Mano de obra
        [materials] Materiales
        [callbacks] Reclamos
        [equipment] Equipo
        [overhead] Gastos generales
        [contingency] Imprevistos
        [profit] Ganancia
        [minimum] Hasta el cobro mínimo
        [tax] Impuesto de venta
       *[rounding] Redondeo
    }

price-line-markup = Recargo en materiales

price-basis-labor =
    { $hours ->
        [one] 1 hora a { $rate }
       *[other] { $hours } horas a { $rate }
    }
price-basis-labor-burden =
    { $hours ->
        [one] 1 hora a { $rate } ({ $wage } + { $burden } de cargas laborales)
       *[other] { $hours } horas a { $rate } ({ $wage } + { $burden } de cargas laborales)
    }
price-basis-charge-out =
    { $hours ->
        [one] 1 hora a { $rate }, todo incluido
       *[other] { $hours } horas a { $rate }, todo incluido
    }
price-basis-trades = pintor { $painter } h a { $painter_rate } + carpintero { $carpenter } h a { $carpenter_rate }, cargas incluidas
price-basis-materials = según la lista
price-basis-equipment =
    { $days ->
        [one] 1 día a { $per_day }
       *[other] { $days } días a { $per_day }
    }
price-basis-overhead = { $share } de mano de obra, materiales y equipo
price-basis-contingency = { $share } de probabilidad de cubrir el costo
price-basis-callbacks =
    { $years ->
        [one] los esperados en 1 año de garantía
       *[other] los esperados en { $years } años de garantía
    }
price-basis-profit = { $share } de recargo sobre todo lo de arriba
price-basis-markup = { $share } de recargo sobre materiales y equipo
price-basis-minimum = el cobro mínimo es de { $amount }
price-basis-tax =
    { $on ->
        [materials] { $rate } de los materiales
       *[everything] { $rate } de todo lo de arriba
    }
price-basis-rounding = al { $step } más cercano

# A note inside the firm, not to the homeowner.
price-no-reserve =
    { $years ->
        [one] Usted da 1 año de garantía y el precio no incluye nada para reclamos. Lo esperado: cerca de { $amount }. En Cómo se cobra puede agregarlos al precio.
       *[other] Usted da { $years } años de garantía y el precio no incluye nada para reclamos. Lo esperado: cerca de { $amount }. En Cómo se cobra puede agregarlos al precio.
    }
price-helper = Las tablas largas en el techo se instalan entre dos personas. Esos días se necesita un ayudante, que ya está en el precio.
price-driver-rates = Qué tanto se ajustan a su cuadrilla los tiempos no medidos
price-driver-material-prices = Precios de los materiales
