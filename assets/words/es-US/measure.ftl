### Headings and the job's names in the Measure room.

measure-gaps = Aberturas
measure-moisture = Humedad de las tablas
measure-room = Cuarto
measure-job = Trabajo

job-more = Dirección de la empresa, logotipo y notas
job-logo = Logotipo
    .hint = Va en la parte de arriba de los papeles. PNG, JPEG o SVG.
job-logo-choose = Elegir un logotipo…
job-logo-another = Cambiar el logotipo…
job-logo-remove = Quitar el logotipo
