### The answer above the rooms.

answer-will-last = Lo más probable es que esta reparación dure.
answer-will-not-last = Lo más probable es que esta reparación no dure.
answer-not-yet = Todavía faltan datos.
answer-costs-less = Cuesta menos, con los reclamos incluidos:
answer-rough = Todavía es una respuesta aproximada: mida más antes de prometerla.
answer-more =
    { $count ->
        [one] 1 más
       *[other] { $count } más
    }
answer-missing = Todavía falta:
answer-go = Ir a donde se anota
