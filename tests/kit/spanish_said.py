"""The sentences of Spanish reasons as patterns, each with what it says in English."""

#: A list of amounts: #, # y #; a list of digits; one unit behind another, the same twice.
_SOME, _DIGITS = r"(?:# , )*(?:# y )?#", r"(?:§ y )*(?:el )?§(?: de arriba)?"
_OPENS = r"reagrupamos (?:un[ao] de l[ao]s ~|#)"

#: Words of a sentence with # for a count, § for a number as it is written and ~ for a name; what that says in
#: English, where {0} is the first of them, {is0} agrees with it and {all} are several in a row.
CLAIMS = {
    # one is so many
    r"# (?:tienen?|son|es) #": "{0} {is0} {1}",
    r"# tiene # , así que contamos todo en ~": "{0} is {1}, so count everything in {2}",
    r"# forman # , y hay #": "{0} make {1}, and there {is2} {2}",
    r"# forman #": "{0} make {1}",
    r"# y # son #": "{0} and {1} make {2}",
    r"eso da # y #": "that is {0} and {1}",
    r"ahora hay #": "now there are {0}",
    r"escrito como siempre, es §": "written the usual way, this is {0}",
    r"# sin cortar son #": "{0} not cut are {1}",
    r"por eso el denominador es §": "so the denominator is {0}",
    r"el último dígito cuenta ~ , así que el denominador es §": (
        "the last digit stands for {0}, so the denominator is {1}"
    ),
    r"cada # forman #": "every {0} make {1}",
    r"§ es factor de § y de §": "{0} is a factor of {1} and of {2}",
    r"solo § cabe justo en § y en § : ya es su mínima expresión": (
        "only {0} goes into {1} and into {2}: it is in simplest form already"
    ),
    r"esa es su mínima expresión": "that is the simplest form",
    r"como una sola fracción , § es §": "as one fraction, {0} is {1}",
    r"§ es §": "{0} is {1}",
    # taking and adding
    r"no hay suficientes ~ para quitar #": "there are not enough {0} to take {1}",
    rf"no hay suficientes ~ para quitar # , así que {_OPENS}": (
        "there are not enough {0} to take {1}, so regroup {one2}"
    ),
    rf"no hay ~(?: para reagrupar)? , así que primero {_OPENS}": (
        "there are no {0} to open, so regroup {one1} first"
    ),
    rf"solo hay ceros hasta l[ao]s ~ , así que primero {_OPENS}": (
        "there are only zeros up to the {0}, so regroup {one1} first"
    ),
    r"reagrupamos # para tener más ~": "regroup {0} to get more {1}",
    _OPENS: "regroup {one0}",
    r"a # les? quitamos #": "take {1} from {0}",
    r"sumamos # y #": "add {0} and {1}",
    r"primero lo más grande: quitamos #": "larger units first: take {0}",
    r"§ menos § (?:es|son) #": "{0} take away {1} leaves {2}",
    r"quedan? (?:§|#)": "{0} {is0} left",
    rf"quedan? {_SOME}": "{all} are left",
    r"no queda nada": "nothing is left",
    rf"en total (?:es|son) (?:§|{_SOME})": "that makes {all} in all",
    rf"hasta aquí (?:es|son) (?:§|{_SOME})": "that makes {all} so far",
    r"apartamos § , y quitamos de §": "set {0} aside, and take from {1}",
    r"§ es la misma cantidad que § , y ahora hay suficiente de cada unidad": (
        "{0} is the same amount as {1}, and now there is enough of each unit"
    ),
    r"de § quedan? §": "{1} is left of {0}",
    r"ahora devolvemos lo que apartamos": "now put back what was set aside",
    r"ahora sumamos § y §": "now add {0} and {1}",
    r"(?:quitamos|juntamos) .*~.*": "unit by unit",
    # jumps
    r"contamos desde § hasta § , con paradas en números fáciles": (
        "count up from {0} to {1}, with stops at easy numbers"
    ),
    r"buscamos cuánto mide cada uno de los #": "find how long each of the {0} is",
    r"buscamos cuánto mide el salto": "find how long the jump is",
    r"empezamos en § y saltamos §": "start at {0} and jump on by {1}",
    r"llegamos a §": "you land on {0}",
    r"desde § , un salto de § llega (?:al|a la) siguiente ~": "from {0}, a jump of {1} lands on the next {2}",
    r"a § le faltan? § para llegar (?:al|a la) siguiente ~ , así que se lo quitamos al otro número": (
        "{0} needs {1} to reach the next {2}, so take that from the other number"
    ),
    r"sumamos § a los dos números : la distancia entre ellos no cambia": (
        "add {0} to both numbers: the distance between them stays the same"
    ),
    r"es más fácil quitar §": "{0} is easier to take away",
    # pieces of one size
    r"cortamos cada parte otra vez para tener ~": "cut each piece again to get {0}",
    r"ahora todas las partes son del mismo tamaño : ~": "now all the pieces are the same size: {0}",
    r"es la misma cantidad, contada en ~": "it is the same amount, counted in {0}",
    r"escribimos (?:cada número|los dos números) (?:con partes del mismo tamaño :|hasta los|con sus) ~": "",
    r"contamos (?:todo )?en ~": "",
    # columns that are multiplied and divided
    r"§ por § es § , y con el § de arriba son §": "{0} times {1} is {2}, and the {3} above make {4}",
    r"# son # y #": "{0} are {1} and {2}",
    r"el punto se pone al final": "the point comes at the end",
    r"ponemos el punto arriba": "write the point above",
    r"escribimos § abajo": "write {0} below",
    r"escribimos § abajo y § arriba de la cifra que sigue": "write {0} below and {1} above the next digit",
    r"ahora multiplicamos por #": "next, multiply by {0}",
    r"multiplicamos por #": "multiply by {0}",
    r"primero escribimos # abajo": "first write {0} below",
    r"los dos números tienen juntos # después del punto": (
        "the two numbers together have {0} after the point"
    ),
    r"por eso la respuesta tiene # después del punto": "so the answer has {0} after the point",
    r"empezamos con #": "begin with {0}",
    r"§ por § es § , y § por § es más que §": ("{0} times {1} is {2}, and {3} times {4} is more than {5}"),
    r"escribimos § arriba de l[ao]s ~ y § abajo": "write {0} over the {1} and {2} below",
    r"§ es menos que § , así que escribimos § arriba de l[ao]s ~": (
        "{0} is less than {1}, so write {2} over the {3}"
    ),
    r"§ menos § es §": "{0} take away {1} leaves {2}",
    r"no sobra nada": "nothing is left over",
    r"escribimos las últimas cifras una debajo de la otra": "write the last digits under each other",
    r"bajamos el §": "bring down the {0}",
    r"§ es menos que § , así que es el residuo": "{0} is less than {1}, so it is the remainder",
    # columns
    r"ahora hay § en l[ao]s ~": "now there {is0} {0} in the {1}",
    r"ahora hay § en l[ao]s ~ y § en l[ao]s ~": "now there {is0} {0} in the {1} and {2} in the {3}",
    r"en l[ao]s ~ , § menos § es §": "in the {0}, {1} take away {2} leaves {3}",
    r"en l[ao]s ~ no se quita nada , así que escribimos §": (
        "in the {0}, nothing is taken away, so write {1}"
    ),
    r"en l[ao]s ~ , solo está § , así que escribimos §": "in the {0}, nothing is added to {1}, so write {2}",
    r"en l[ao]s ~ , solo está el § de arriba , así que escribimos §": (
        "in the {0}, nothing is added to the {1} above, so write {2}"
    ),
    rf"en l[ao]s ~ , {_DIGITS} son §": "in the {0}, {digits} make {last}",
    r"a la izquierda no hay nada , así que escribimos §": "nothing stands to the left, so write {0}",
    r"# (?:es|son) # y #": "{0} are {1} and {2}",
    r"escribimos § abajo y § arriba de l[ao]s ~": "write {0} below and {1} above the {2}",
    # comparing
    r"(?:los dos son) §": "both are {0}",
    r"# (?:es|son) más que #(?: , y eso decide)?": "{0} {is0} more than {1}",
    r"# (?:es|son) menos que #(?: , y eso decide)?": "{0} {is0} fewer than {1}",
    r"# (?:es|son) más que ningun[ao] de l[ao]s ~ , y eso decide": "{0} {is0} more than zero {1}",
    r"§ es menos que la mitad de § , así que § es menos que un medio": (
        "{0} is less than half of {1}, so {2} is less than one half"
    ),
    r"§ es más que la mitad de § , así que § es más que un medio": (
        "{0} is more than half of {1}, so {2} is more than one half"
    ),
    r"§ es la mitad de § , así que § es un medio": "{0} is half of {1}, so {2} is one half",
    r"hay § partes? en cada número": "there {is0} {0} {pieces0} in each",
    r"l[ao]s ~ son más (?:grandes|pequeñ[ao]s) que l[ao]s ~ , y eso decide": "",
    r"a § le falta # para formar # , y a § le falta #": "{0} needs {1} to make {2}, and {3} needs {4}",
    r"l[ao]s ~ son más grandes que l[ao]s ~ , así que § está más cerca de #": (
        "{0} are larger than {1}, so {2} is nearer to {3}"
    ),
    r"l[ao]s ~ son más pequeñ[ao]s que l[ao]s ~ , así que § está más cerca de #": (
        "{0} are smaller than {1}, so {2} is nearer to {3}"
    ),
    r"§ es #": "{0} is {1}",
    r"§ es menos que #": "{0} is less than {1}",
    r"§ es más que #": "{0} is more than {1}",
    r"los dos tienen # , así que comparamos las fracciones": "both have {0}, so compare the fractions",
    r"los dos tienen # , y § tiene § más": "both have {0}, and {1} has {2} more",
    r"l[ao]s ~(?: , l[ao]s ~)*(?: y l[ao]s ~)? son iguales": "",
    r"tod[ao]s son ~ , así que solo importa cuánt[ao]s hay": "",
    r"l[ao]s (?:partes son del mismo tamaño|lugares más grandes son iguales)": "",
    r"(?:primero deciden|donde son iguales , deciden) l[ao]s ~": "",
    r"así quedan en orden , de (?:menor a mayor|mayor a menor)": "",
    # rounding
    r"contamos por ~ : § está después de § y antes de §": "count by {0}: {1} comes after {2} and before {3}",
    r"el punto medio es § , y § ya lo pasa": "halfway is {0}, and {1} is past it",
    r"el punto medio es § , y § no llega tan lejos": "halfway is {0}, and {1} is not that far",
    r"está a § de § y a § de § , así que § está más cerca": (
        "it is {0} from {1} and {2} from {3}, so {4} is nearer"
    ),
    # a missing number
    r"deshacemos lo que está junto al espacio en blanco, para que quede solo": "",
    r"lo que se quita y lo que queda forman el total , §": "the whole is {0}",
    r"por eso el espacio en blanco es el total menos lo que queda , §": "{0} is what is left",
    r"se quitan? (?:§|#)(?: y #)?": "{all} are taken away",
    # multiplying
    r"separamos § en § (?:, § )*y §": "split {0} into {rest}",
    r"multiplicamos cada parte por §": "multiply each part by {0}",
    r"multiplicamos cada parte por cada parte": "",
    r"(?:§|#) por (?:§|#) (?:es|son) (?:§|#)": "{0} times {1} is {2}",
    r"§ por § es lo mismo que § por §": "{0} times {1} is as much as {2} times {3}",
    r"damos # de §": "that is {0} of {1}",
    r"multiplicamos los numeradores , y multiplicamos los denominadores": "",
    r"un entero en § partes , cada una cortada en § , tiene § partes": (
        "a whole in {0} parts, each cut into {1}, has {2} parts"
    ),
    r"multiplicamos (?:l[ao]s ~ por §(?: ,)? ?(?:y )?)+": "take {times}",
    # factors and multiples
    r"las parejas que siguen son las mismas al revés , así que son todas": "",
    r"§ no cabe justo en §": "",
    r"contamos de § en § hasta §": "",
    r"el siguiente es § , y ya se pasa": "",
    # a part of a measure or of money
    r"# es una de § partes iguales": "{0} of it is one of {1} equal shares",
    r"tomamos § de esas partes": "take {0} of them",
    # prime or composite, a multiple or not
    r"§ por § es § , y sobran? §": "{0} times {1} is {2}, and {3} is left",
    r"§ por § es más que §": "{0} times {1} is more than {2}",
    r"saltamos (?:§(?: ,| y)? ?)+: ya probamos factores menores": "skip {all}: smaller factors are tried",
    r"§ es factor de § además de § y del mismo número": (
        "{0} is a factor of {1} besides {2} and the number itself"
    ),
    r"un factor mayor va con un factor menor , y esos ya los probamos": "",
    r"los únicos factores son § y §": "so the only factors are {0} and {1}",
    r"el único factor de § es §": "the only factor of {0} is {1}",
    r"un primo tiene dos factores": "a prime number has two factors",
    r"si contamos de § en § , llegamos a §": "counting by {0} comes to {2}",
    r"si contamos de § en § , pasamos de §": "counting by {0} jumps over {2}",
    # line plots
    r"sobre § hay #": "above {0} are {1}",
    r"cada marca representa el valor que está debajo": "",
    r"ahí no hay ninguna marca": "",
    r"juntamos todas las medidas": "",
    r"hay # , así que repartimos el total por igual": "there are {0}, so share the total equally",
    r"la columna más alta tiene #": "the highest stack has {0}",
    r"el valor que está debajo es §": "the value below it is {0}",
    r"el mayor valor con una marca es §": "the greatest value with a mark is {0}",
    r"el menor es §": "the least is {0}",
    r"de izquierda a derecha las columnas tienen (?:§ , )*§ y § marcas": "",
    # several steps
    r"(?:primero los paréntesis|al final|de izquierda a derecha) : §": "",
    r"(?:multiplicamos|dividimos) antes de sumar o restar : §": "",
    r"en vez de la suma , multiplicamos cada parte por §": "",
    r"la raya de una fracción divide : §": "",
    # things in groups
    r"dividimos para saber cuántos grupos de § hay en §": "divide to find how many groups of {0} are in {1}",
    r"para eso hace falta un grupo más": "",
    r"uno más que § es §": "one more than {0} is {1}",
    r"con eso no se completa un grupo": "",
    r"# están? completos?": "{0} {is0} full",
    # dividing
    r"repartimos # entre §": "share {0} among {1}",
    r"a cada uno le tocan? #": "each gets {0}",
    r"a cada uno le tocan? # más": "each share gets {0} more",
    r"sobran? (?:§|#)": "{0} {is0} left",
    rf"sobran? (?:§|{_SOME}) , y es menos que §": "{most} is left over, and that is less than {last}",
    rf"sobran? (?:§|{_SOME}) , y no alcanza para repartir entre §": (
        "{most} is left over, and that is not enough to share among {last}"
    ),
    r"con l[ao]s ~ que ya hay son #": "with the {1} that is {1}",
    r"# no alcanzan? para repartir entre §": "{0} {is0} not enough to share among {1}",
    r"# de § (?:es|son) §": "{0} of {1} {is0} {2}",
    r"§ por § es § , así que § entre § es §": "{0} times {1} is {2}, so {3} divided by {4} is {5}",
    r"cortamos # en # cada vez": "cut {0} into {1} each",
    r"una parte de cada vez da #": "one part of each makes {0}",
    r"cortamos cada ~ en #": "cut each {0} into {1}",
    r"cortamos cada entero de § que sobran en #": "cut each of the {0} that are left into {1}",
    r"§ (?:son|es) #(?: y § (?:son|es) #)?": "{row}",
    r"medimos grupos de # en #": "measure groups of {0} out of {1}",
    r"§ entre § es (?:§|#)": "{0} divided by {1} is {2}",
    r"las cifras no terminarían nunca , así que escribimos § como §": (
        "the digits would never end, so write {0} as {1}"
    ),
}
#: What a film asks of things in groups, and answers.
GROUPS_ASKED = {
    r"cuántos grupos de § hacen falta para §": "how many groups of {0} are needed for {1}",
    r"cuántos grupos completos de § hay en §": "how many full groups of {0} are in {1}",
    r"cuántos de § sobran en grupos de §": "how many of {0} are left over in groups of {1}",
    r"(?:por eso|en el problema @ ,) hacen? falta #": "so {0} is needed",
    r"(?:por eso|en el problema @ ,) sobran? §": "so {0} is left over",
}
