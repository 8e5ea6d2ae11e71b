### The answer: what to do, when, for how much, and what would make it surer. Each message is a sentence
### of its own; the sentences of the answer stand one after the other.

answer-draw-boards = Empiece con las tablas: agregue una superficie, ponga su tamaño y elija un patrón.
answer-measure-gaps = Las tablas están dibujadas. Mida unas cuantas aberturas: haga clic en una junta y escriba su ancho.
answer-fix-problems = Todavía no se puede calcular ninguna reparación. Corrija los datos marcados en rojo.

answer-water-first =
    { $count ->
        [one] Primero encuentre por dónde entra el agua en la sección { $sections } y deje secar las tablas.
       *[other] Primero encuentre por dónde entra el agua en las secciones { $sections } y deje secar las tablas.
    }

answer-reseal =
    { $when ->
        [on] Vuelva a sellar el { $from } con { $sealant }.
        [between] Vuelva a sellar entre el { $from } y el { $to } con { $sealant }.
       *[any_time] Vuelva a sellar en cualquier época del año con { $sealant }.
    }
answer-holds = El cordón se mantiene dentro de su clase en { $share } del largo de las juntas.
answer-reseal-fails =
    { $when ->
        [on] Volver a sellar el { $from } con { $sealant } pasaría de su clase en { $past } del largo de las juntas.
        [between] Volver a sellar entre el { $from } y el { $to } con { $sealant } pasaría de su clase en { $past } del largo de las juntas.
       *[any_time] Volver a sellar con { $sealant } pasaría de su clase en { $past } del largo de las juntas, en cualquier época.
    }
answer-instead-sealant = La clase de { $sealant } alcanza para { $share } del largo en sus mejores semanas.
answer-instead-option = Vea mejor esta opción: { $option }.
answer-instead-unknown = La clase de ningún sellador del catálogo alcanza para suficientes juntas. Considere cambiar las tablas.
answer-too-narrow =
    { $when ->
        [between] La mayoría de las juntas abiertas miden menos de { $narrowest } aun en sus mejores semanas, del { $from } al { $to }, así que el cordón no tiene de dónde agarrarse. Déjelas sin sellar y pinte la V, o primero ábralas más.
       *[other] La mayoría de las juntas abiertas miden menos de { $narrowest } todo el año, así que el cordón no tiene de dónde agarrarse. Déjelas sin sellar y pinte la V, o primero ábralas más.
    }
answer-replace = Cambie las tablas por nuevas secadas a { $moisture } de humedad. En las semanas más secas del año, sus juntas se abren { $opens }.
answer-as-chosen = { $option }. Cómo queda: { $look }.
answer-not-possible = { $option }: aquí no es una opción.

answer-price =
    { $days ->
        [one] Cerca de { $total } ({ $low } a { $high }) por 1 día en la obra.
       *[other] Cerca de { $total } ({ $low } a { $high }) por { $days } días en la obra.
    }
answer-price-over =
    { $days ->
        [one] Cerca de { $total } ({ $low } a { $high }) por 1 día en la obra.
       *[other] Cerca de { $total } ({ $low } a { $high }) por { $days } días en la obra, { $calendar_days } días de principio a fin.
    }
answer-price-without-days = Cerca de { $total } ({ $low } a { $high }). No se sabe cuántos días toma.
answer-callback =
    { $years ->
        [one] Otro reclamo en 1 año: { chance-percent }.
       *[other] Otro reclamo en { $years } años: { chance-percent }.
    }
answer-cheaper = Otra opción cuesta menos con los reclamos incluidos.

answer-best-weeks =
    { $when ->
        [on] el { $from }
        [between] entre el { $from } y el { $to }
       *[any_time] en cualquier época del año
    }

answer-cause = { cause-label }: { chance-percent }.
answer-cause-in-section = { cause-label }, sección { $section }: { chance-percent }.
answer-cause-bonded = Es probable que también haya tablas pegadas en grupos.

answer-install-line-moved = La junta que se movió cuenta en el promedio de su sección; las juntas de al lado muestran lo que hizo la madera.
answer-install-contradicted = Solo por el ancho, las aberturas indican tablas con { $moisture } de humedad ({ $low } a { $high }) al instalarse, pero las otras lecturas dicen otra cosa. En este cuarto, la madera llega a cerca de { $room }.
answer-install-other-boards = Las otras tablas tenían cerca de { $moisture } de humedad ({ $low } a { $high }) al instalarse. En este cuarto, la madera llega a cerca de { $room }.
answer-install-boards = Las tablas tenían cerca de { $moisture } de humedad ({ $low } a { $high }) al instalarse. En este cuarto, la madera llega a cerca de { $room }.

answer-missing-surface = Agregue una superficie con su tamaño y su patrón
answer-missing-fixes =
    { $count ->
        [one] Corrija 1 dato, marcado en rojo
       *[other] Corrija { $count } datos, marcados en rojo
    }
answer-missing-typed-gap = Diga si la junta { $joint } tiene { $typed } o { $meant } de ancho
answer-missing-gaps =
    { $count ->
        [one] Mida 1 abertura más en { $surface }, sección { $section }
       *[other] Mida { $count } aberturas más en { $surface }, sección { $section }
    }
answer-missing-gap-for-cause = Para aclarar la causa, mida una abertura más en { $surface }, sección { $section }
answer-missing-moisture-for-cause = Para aclarar la causa, tome una lectura de humedad de las tablas en { $surface }, sección { $section }
answer-missing-room-for-cause = Para aclarar la causa, lea un higrómetro en el cuarto
answer-missing-failures-for-cause = Para aclarar la causa, anote cómo falló el cordón en las juntas que midió
answer-missing-moisture = Tome una lectura de humedad de las tablas
answer-missing-install-date = Ponga la fecha en que se instalaron las tablas
answer-missing-place = Indique dónde está la casa: pueblo, código postal o coordenadas
answer-missing-year-built = Escriba el año en que se construyó la casa: desde 1978 no se cobra trabajo con precaución por plomo
answer-missing-payers = Indique quién paga: es probable que las tablas se instalaran demasiado húmedas
answer-missing-timed-section = Tome el tiempo de una sección, para un precio más firme
