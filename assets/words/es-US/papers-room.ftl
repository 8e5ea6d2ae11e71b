### The Papers room: previews, templates, the wording of the letter.

papers-write = Guardar los papeles…
papers-write-again = Guardar otra vez
papers-drafts = También borradores
    .hint = Guarda también los papeles por los que todavía no se puede responder. Cada página dice entonces que es un borrador, y por qué.
papers-proposal-terms = Condiciones de la propuesta
papers-figures = De dónde salen las cifras
papers-figures-from = Todas las cifras vienen de las otras pestañas. Los nombres, las direcciones y el logotipo están en Medir, en Trabajo.
papers-typesetting = Preparando…
papers-page = { $paper }, página { $page } de { $pages }
papers-enlarge = Haga clic para agrandar

papers-template-edit = Editar la plantilla…
    .hint = Pone una copia de la plantilla junto a sus ajustes, para cualquier editor de texto
papers-template-own = Su plantilla
papers-template-reload = Volver a cargar
papers-template-built-in = Usar la plantilla incluida
    .hint = Su plantilla se conserva con un nombre que termina en .old
papers-template-made = La plantilla está en { $path }. Edítela con cualquier editor de texto; las notas de arriba dicen qué puede mostrar.
papers-template-no-place = En esta computadora no hay una carpeta para sus propias plantillas.
papers-template-kept = Su plantilla se conserva como { $path }.

wording-edit = Editar el texto
wording-own = su texto
wording-restore = Volver al borrador
wording-draft-changed = El borrador ha cambiado desde entonces. Ahora dice:
