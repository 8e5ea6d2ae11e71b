### The homeowner's letter, in sentences. Each stands alone or is followed by the next with a space.

letter-heading-saw = Lo que vimos
letter-heading-why = Qué pasó
letter-heading-moves = Qué se puede esperar
letter-heading-plan = Lo que vamos a hacer
letter-heading-asks = Lo que le pedimos
letter-heading-more = Algo más

## What we saw

letter-no-gaps = Todavía no hemos medido ninguna abertura.
letter-measured = El { $date } medimos { $joints ->
    [one] 1 junta
   *[other] { $joints } juntas
}.
letter-open = { $open ->
    [0] { $joints ->
        [one] No está abierta.
       *[other] Ninguna está abierta.
    }
    [one] { $joints ->
        [one] Está abierta { $widest }.
       *[other] Una está abierta, { $widest }.
    }
   *[other] { $open } están abiertas; la más ancha, { $widest }.
}
letter-moisture = Las tablas tienen hoy cerca de { $moisture }% de humedad. Es nuestro mejor cálculo, con { $readings ->
    [one] 1 lectura del medidor
   *[other] { $readings } lecturas del medidor
} y el aire del cuarto.
letter-moistures = Las tablas tienen hoy entre { $low } y { $high }% de humedad. Es nuestro mejor cálculo, con { $readings ->
    [one] 1 lectura del medidor
   *[other] { $readings } lecturas del medidor
} y el aire del cuarto.

## What happened

letter-wetted = Una parte de sus tablas se mojó. La madera mojada se hincha y las tablas se aplastan los cantos entre sí; al secarse, las aberturas quedan más anchas que antes.
letter-framing-moved = Una junta está mucho más abierta que las demás; lo más probable es que se haya movido la estructura que está detrás. Eso lo vamos a revisar primero.
letter-weak-sealant = Un buen sellador aguanta este movimiento, pero el de sus juntas se soltó con aberturas pequeñas.
letter-wood-moves = La madera toma y suelta humedad según el aire que la rodea, y la tabla se angosta cuando se seca.
letter-install-moisture = A juzgar por las aberturas, las tablas tenían cerca de { $moisture } de humedad cuando se instalaron (probablemente entre { $low } y { $high }). En su cuarto, la madera se estabiliza cerca de { $room }.
letter-not-possible = “{ $option }” no se puede hacer aquí. { $reason } Por eso no lleva precio.
letter-advised-against = No le recomendamos esta reparación: lo más probable es que las juntas se abran otra vez. La haríamos solo si usted la pide, y no podemos dar garantía sobre ella.
letter-too-wet-likely = Lo más probable es que las tablas estuvieran demasiado húmedas para este cuarto ({ chance-percent }), pero las lecturas no lo confirman. Al secarse, las tablas se angostan un poco y eso se ve como aberturas. El sellador puesto antes de que se secaran no pudo estirarse tanto.
letter-too-wet-open = Con las lecturas no se puede saber si las tablas estaban demasiado húmedas para este cuarto o si es el movimiento normal de las temporadas.
letter-too-wet = Las lecturas indican con bastante claridad que las tablas estaban demasiado húmedas para este cuarto cuando se instalaron. Al secarse, cada una se angostó un poco y eso se ve como aberturas. El sellador puesto antes de que se secaran no pudo estirarse tanto.
letter-seasonal-likely = Lo más probable es que las tablas estuvieran tan secas como debían y que esto sea el movimiento normal de las temporadas: las juntas se abren en la temporada seca y se cierran solas después. Las lecturas no lo confirman.
letter-seasonal = Las lecturas indican que las tablas estaban tan secas como debían. Lo que usted ve es el movimiento normal de las temporadas: las juntas se abren en la temporada seca y se cierran solas después.
letter-seasonal-rest = Lo más probable es que las demás tablas estuvieran tan secas como debían. Lo que se ve en ellas es el movimiento normal de las temporadas.
letter-past-tongue = En { $count ->
    [one] la sección
   *[other] las secciones
} { $sections } las juntas se abren más que la lengüeta; eso no lo sostiene ningún sellador.
letter-wet-sections = Las tablas de { $count ->
    [one] la sección
   *[other] las secciones
} { $sections } están más húmedas de lo que explica el aire del cuarto. Ahí entró agua y puede que siga entrando. Antes de sellar hay que encontrar por dónde, repararlo y dejar secar las tablas. Eso no está en nuestro precio.

## What to expect

letter-keeps-opening = Si no se hace nada, una junta típica, que hoy mide { $now }, se sigue abriendo: llega a { $widest } en las semanas más secas.
letter-closes = Si no se hace nada, una junta típica, que hoy mide { $now }, se cierra en las semanas más húmedas (hacia { $month }) y llega a { $widest } en las más secas.
letter-moves = Si no se hace nada, una junta típica, que hoy mide { $now }, mide cerca de { $narrowest } en las semanas más húmedas (hacia { $month }) y { $widest } en las más secas.

## What we'll do

letter-replace = Quitamos las tablas y ponemos nuevas que antes se hayan secado al nivel de su cuarto: las apilamos en el cuarto, con aire por todos lados, hasta que el medidor indique que están listas. Las pintamos por todos los lados antes de instalarlas, también las lengüetas, para que no se vea madera cruda cuando se muevan.
letter-new-joints = En las semanas más secas, las juntas nuevas se abren cerca de { $widest }.
letter-too-narrow = La mayoría de las juntas abiertas miden menos de { $narrowest } aun en sus mejores semanas para sellar. Ahí el sellador no tiene de dónde agarrarse y se rompería otra vez. Le recomendamos dejarlas sin sellar, con la V limpia y pintada. Si de todos modos quiere sellarlas, primero hay que abrirlas más; el precio de abajo es por sellarlas sin ese paso.
letter-reseal = Limpiamos las juntas, damos imprimador a los cantos sin pintura, sellamos { $run } de juntas y le damos a toda la superficie { $coats ->
    [one] 1 mano de pintura
   *[other] { $coats } manos de pintura
}. El sellador que usamos: { $sealant }.
letter-reseal-joints = Limpiamos las juntas, damos imprimador a los cantos sin pintura, sellamos { $run } de juntas y les pasamos { $coats ->
    [one] 1 mano de pintura
   *[other] { $coats } manos de pintura
} con brocha. La demás pintura se queda, así que la nueva se puede notar un poco a su lado. El sellador que usamos: { $sealant }.
letter-not-counted = Las juntas en los extremos, ingletes y bordes ({ $run }) no forman parte de esto: no las hemos medido.
letter-seal-on = Pensamos sellar el { $date }.
letter-best-weeks = La mejor época es entre el { $from } y el { $to }: si se sella entonces, el cordón nuevo es el que menos se estira en el año.
letter-most-weeks = Entre el { $from } y el { $to }, cualquier semana sirve igual para sellar.
letter-any-time = Se puede hacer en cualquier época del año.
letter-reopening = { $band ->
    [under] La probabilidad de que algo se vuelva a ver en las juntas { $years ->
        [one] en 1 año
       *[other] en { $years } años
    } es de menos de { $chance }.
    [over] La probabilidad de que algo se vuelva a ver en las juntas { $years ->
        [one] en 1 año
       *[other] en { $years } años
    } es de más de { $chance }.
   *[plain] La probabilidad de que algo se vuelva a ver en las juntas { $years ->
        [one] en 1 año
       *[other] en { $years } años
    } es de cerca de { $chance }.
}
letter-reopening-open = { $why ->
    [paint] Es nuestra mejor estimación, y está lejos de ser segura: nadie sabe cuánto se estira la pintura antes de mostrar grietas finas.
   *[house] Es nuestra mejor estimación, y está lejos de ser segura: no se sabe todo de la casa.
}
letter-reopening-range = No se sabe todo de la casa, así que podría ser desde { $low } hasta { $high }.
letter-reopening-paint = { $band ->
    [under] La mayor parte son grietas finas en la pintura sobre un sellador que sí aguanta. Se pueden retocar; eso no lo cubre la garantía. El sellador mismo se abre en menos de { $chance } de los casos.
    [over] Una parte son grietas finas en la pintura sobre un sellador que sí aguanta. Se pueden retocar; eso no lo cubre la garantía. El sellador mismo se abre en más de { $chance } de los casos.
   *[plain] Una parte son grietas finas en la pintura sobre un sellador que sí aguanta. Se pueden retocar; eso no lo cubre la garantía. El sellador mismo se abre en cerca de { $chance } de los casos.
}
letter-days = El trabajo nos toma { $days ->
    [one] 1 día
   *[other] { $days } días
}.
letter-days-closed = El trabajo nos toma { $days ->
    [one] 1 día
   *[other] { $days } días
}, y necesitamos el cuarto cerrado { $closed ->
    [one] 1 día
   *[other] { $closed } días
}.

## What we ask of you

letter-ask-humidity = Nuestros cálculos cuentan con que el cuarto se mantenga entre { $low } y { $high } de humedad, más o menos, todo el año; un higrómetro pequeño se lo indica.
letter-ask-call = Las aberturas finas como un cabello son normales en las semanas más secas. Llámenos si una se abre más de { $widest } ({ $cards ->
    [one] más o menos el grueso de una tarjeta de crédito
   *[other] más o menos { $cards } tarjetas de crédito juntas
}), o si un lugar se ve húmedo, y vamos a verla.{ $warranted ->
    [yes] {" "}Lo que cubre la garantía está en la propuesta.
    [later] {" "}La propuesta dirá lo que cubre la garantía.
   *[no] {""}
}
letter-ask-call-covered = Llámenos si algo se raja o se afloja, o si un lugar se ve húmedo.
letter-paint-all = Después le damos a toda la superficie { $coats ->
    [one] 1 mano de pintura
   *[other] { $coats } manos de pintura
}.
letter-starts = Lo más pronto que podemos empezar es el { $date }.
letter-left-open = { $count ->
    [one] Otra junta es demasiado angosta para sellarla: la limpiamos y la pintamos, y queda abierta.
   *[other] Otras { $count } juntas son demasiado angostas para sellarlas: las limpiamos y las pintamos, y quedan abiertas.
}
letter-done-by = Con el tiempo que toma secar, terminamos hacia el { $date }.
letter-planned = Pensamos empezar el { $date }.
letter-comes-back = Volvemos hacia el { $date }.
letter-ask-call-left = Las aberturas se hacen más anchas en la temporada seca y más angostas en la húmeda. Llámenos si una se abre mucho más de lo que le dijimos, o si un lugar se ve húmedo.
letter-ask-visit = { $years ->
    [0] Permítanos volver a revisar después del primer año completo.
    [one] Permítanos volver a revisar antes de que se cumpla el primer año.
   *[other] Permítanos volver a revisar después del primer año completo, y en cualquier momento durante { $years } años.
}
letter-room-runs = Tal como vive usted ahora en el cuarto, la humedad va de cerca de { $low } en los días más secos a cerca de { $high } en los más húmedos.
letter-ask-call-open = Las juntas muestran a propósito una línea abierta, que cambia con las estaciones: la más ancha debería llegar a { $widest } en las semanas más secas. Llámenos si una se abre claramente más que eso, o si un lugar se ve húmedo.
