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
