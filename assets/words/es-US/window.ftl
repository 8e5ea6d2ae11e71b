### The answer above the rooms.

answer-will-last = Lo más probable es que esta reparación dure.
answer-will-not-last = Lo más probable es que esta reparación no dure.
answer-not-yet = Todavía faltan datos.
answer-costs-less = Cuesta menos, con los reclamos incluidos:
papers-leave-out = { $count ->
    [one] Lo que escribió en este campo no se puede usar, así que los papeles no lo llevan: { $fields }. Corríjalo, o presione el botón otra vez para guardarlos sin eso.
   *[other] Lo que escribió en estos campos no se puede usar, así que los papeles no lo llevan: { $fields }. Corríjalos, o presione el botón otra vez para guardarlos sin eso.
}
answer-rough = Todavía es una respuesta aproximada: mida más antes de prometerla.
answer-more =
    { $count ->
        [one] 1 más
       *[other] { $count } más
    }
answer-missing = Todavía falta:
answer-go = Ir a donde se anota

list-search = Buscar en la lista
    .hint = escriba para buscar
list-search-none = No hay nada con ese nombre en la lista
list-sold-as = { $name } (se vende como { $sold_as })
list-sold-as-several = Varias especies se venden con ese nombre. El sello o el proveedor dice cuál es. Si ninguno lo dice, tome la primera: es la que más se mueve.
list-choose = Elegir…

## What the program is

about-program = Gapwright { $version }
about-license = MIT o Apache-2.0, a su elección.
about-fonts = Letras de los papeles: Inter y Noto, SIL Open Font License 1.1.
about-climate = Climas: informes mensuales CLIMAT del Deutscher Wetterdienst, Climate Data Center (CC BY 4.0), revisados y promediados; años típicos del Departamento de Energía de EE. UU.
about-places = Poblaciones: GeoNames (CC BY 4.0). Códigos postales: Oficina del Censo de EE. UU.
about-network = Gapwright no abre ninguna conexión de red.
about-libraries = { $count } bibliotecas con las que está hecho, con sus licencias
about-close = Cerrar
