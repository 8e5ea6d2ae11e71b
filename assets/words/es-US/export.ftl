### Writing files for other programs.

export-folder-failed = No se puede crear la carpeta “{ $path }”: { $reason }. Elija otra carpeta.
export-file-failed = No se puede guardar “{ $path }”: { $reason }. Elija otra carpeta.
export-table-failed = No se puede hacer una tabla: { $reason }.
export-json-failed = No se puede hacer el JSON: { $reason }.
export-picture-failed = No se puede hacer una imagen: { $reason }.
export-drawing-failed = No se puede hacer el dibujo: { $reason }.

# What a figure may be, in the schema of job files
schema-range = De { $low } a { $high }

# Calendar entries
calendar-seal = Mejores semanas para sellar: { $title }
calendar-work = Obra: { $title }
calendar-humid = Medir otra vez las juntas, temporada húmeda: { $title }
calendar-dry = Medir otra vez las juntas, temporada seca: { $title }
calendar-follow-up-told = Las mismas juntas, en los mismos lugares. Están en la tarjeta de seguimiento, con el pronóstico.
