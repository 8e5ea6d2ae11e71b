### Why a job, a price file, a logo or another file could not be read or written.

# $cause is what kept the system from reading; $system is what the system itself says.
file-unreadable = { $cause ->
    [missing] “{ $path }” no está ahí. Revise el nombre y la carpeta, o elija otro archivo.
    [denied] No tiene permiso para leer “{ $path }”. Cambie sus permisos, o elija otro archivo.
    [folder] “{ $path }” es una carpeta. Elija un archivo de adentro.
   *[other] No se puede leer “{ $path }”. El sistema dice: { $system }. Elija otro archivo.
}
file-unwritable = { $cause ->
    [missing] No se puede guardar “{ $path }” porque su carpeta no existe. Guarde en otra carpeta.
    [denied] No tiene permiso para escribir “{ $path }”. El archivo anterior no cambió. Guarde en otra carpeta.
    [folder] “{ $path }” es una carpeta. Guarde con otro nombre.
    [full] No se puede guardar “{ $path }” porque el disco está lleno. El archivo anterior no cambió. Libere espacio, o guarde en otra carpeta.
    [read-only] No se puede guardar “{ $path }” porque el disco es de solo lectura. El archivo anterior no cambió. Guarde en otra carpeta.
   *[other] No se puede guardar “{ $path }”. El sistema dice: { $system }. El archivo anterior no cambió. Guarde en otra carpeta.
}

file-too-large = “{ $path }” tiene { $megabytes } MB, demasiado para un trabajo. Elija un archivo de trabajo (.ron).
file-not-text = “{ $path }” no es un archivo de texto. Elija un archivo de trabajo (.ron).
file-price-book = “{ $path }” es un archivo de precios, no un trabajo. Impórtelo en Catálogo.
file-newer = “{ $path }” se guardó con una versión más nueva de Gapwright (versión de archivo { $found }; este programa lee hasta la versión { $known }). No cambió. Ábralo con la versión más nueva.
file-unserializable = No se puede guardar el trabajo: { $reason }. El archivo anterior no cambió.

file-not-a-price-book = “{ $path }” no es un archivo de precios: { $reason }. Elija un archivo de precios exportado de Gapwright.
file-learned-rate = { $count ->
    [one] 1 trabajo terminado propio
   *[other] { $count } trabajos terminados propios
}

file-logo-kind = Este archivo no es una imagen PNG, JPEG o SVG. Guarde el logotipo en uno de esos formatos y elíjalo otra vez.
file-logo-size = Este logotipo ocuparía { $kilobytes } kB en el trabajo; el límite es de { $limit } kB. Elija uno más sencillo o más pequeño.
file-logo-text = El logotipo del archivo del trabajo está dañado. Elija el logotipo otra vez.

file-photo-too-large = “{ $path }” tiene { $megabytes } MB; el límite de una foto es de { $limit } MB. Elija una más pequeña.
file-photo-pixels = “{ $path }” tiene demasiados píxeles para abrirla. Guarde una copia más pequeña y elija esa.
file-photo-kind = “{ $path }” no es una imagen que se pueda leer. Elija un JPEG o PNG.
file-photos-too-many = Hay demasiadas fotos en “{ $path }”. Quite las que ya no se usan.
