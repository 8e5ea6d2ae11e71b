### Tables of readings that the command line takes, and making a job from them.

reading-table-line = { $file }, línea { $line }: { $what }
reading-table-no-column = en los encabezados no hay columna “{ $column }”. Agréguela, o cambie el nombre de la suya.
reading-table-empty = no hay nada en “{ $column }”.
reading-table-entry = “{ $column }”: { $what }
reading-table-choice = “{ $column }”: “{ $text }” no es una de { $choices }.
reading-table-form = no se puede leer: { $reason }.

new-job-exists = Ya hay un archivo “{ $path }”. Elija otro nombre, o agregue --force.
new-job-size = “{ $text }” no son dos lados. Escríbalos como "18' x 9' 6\"" o "5.4 m x 2.9 m".
new-job-side = { $side } no puede ser el lado de un cuarto: tiene que medir de { $low } a { $high }.
new-job-entry = --{ $option }: { $what }
new-job-units = “{ $text }” no es inches ni mm.
new-job-kind = “{ $text }” no es ceiling, slope ni wall.
new-job-pattern = “{ $text }” no es uno de { $patterns }.
new-job-species = “{ $text }” no es una especie del catálogo. ¿Quiso decir una de estas: { $near }?
new-job-species-sold = “{ $text }” es un nombre comercial. La especie que se vende así es { $near }: escríbala así.
new-job-species-several = “{ $text }” es un nombre comercial de varias especies. El sello o el proveedor dice cuál es. Escriba una de estas: { $near }.
new-job-species-none = “{ $text }” no es una especie del catálogo.
new-job-place = --place: { $lead } { $places }
new-job-place-several = Hay más de uno. Agregue el estado, o use un código ZIP:
new-job-right-wall = --right es para una pared con el borde de arriba inclinado.
new-job-faults = { $count ->
    [one] 1 falla: no se guardó ningún trabajo.
   *[other] { $count } fallas: no se guardó ningún trabajo.
}
