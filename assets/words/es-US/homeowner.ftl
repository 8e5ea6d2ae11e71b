### The homeowner's pages.

homeowner-happened = Qué pasó
homeowner-year = El año
homeowner-options = Opciones
homeowner-plan = El plan
homeowner-leave-key = Esc
homeowner-prices = Mostrar precios
homeowner-year-title = Cómo se mueven sus juntas durante el año
homeowner-options-title = Qué se puede hacer
homeowner-proposed = Lo que proponemos
homeowner-against = No lo recomendamos: lo más probable es que las juntas se abran otra vez.
homeowner-look = Cómo queda: { $look }.
homeowner-meanwhile = Durante el trabajo: { $upset }.
homeowner-come-back = { $years ->
    [one] Probabilidad de que se vuelvan a ver grietas o aberturas en 1 año: { chance-percent }.
   *[other] Probabilidad de que se vuelvan a ver grietas o aberturas en { $years } años: { chance-percent }.
}
homeowner-room-closed = { $work ->
    [0] {""}
    [one] 1 día de trabajo.{" "}
   *[other] { $work } días de trabajo.{" "}
}{ $days ->
    [0] El cuarto queda abierto.
    [one] El cuarto queda cerrado 1 día.
   *[other] El cuarto queda cerrado { $days } días.
}
homeowner-cost = Cuesta { $total }; usted paga { $owner }.
homeowner-cost-all = Cuesta { $total }.
homeowner-caution = Este es un estimado con pocas lecturas. No significa que el edificio sea seguro o saludable; los códigos locales y los oficios con licencia mandan.
