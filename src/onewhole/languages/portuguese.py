"""Portuguese of Brazil in one file: numbers, the page for home, and what a film tells of mixed numbers.

From memory, all of it: to be checked by a native speaker who teaches. Decimal point as in the child's page.
"""

from msgspec.structs import replace

from onewhole.languages.by_messages.film_messages import FilmMessages
from onewhole.languages.by_messages.home_messages import HomeMessages
from onewhole.languages.by_messages.number_tables import NumberTables
from onewhole.languages.by_messages.one_file import LanguageFile
from onewhole.languages.by_messages.reason_messages import ReasonMessages
from onewhole.languages.english.round_page import ROUND_PAGE
from onewhole.number.name_wanted import NumberForm
from onewhole.number.unit import Unit
from onewhole.problems.needs import Operation
from onewhole.sentences.node import Thing
from onewhole.statements.line_plot import Bound, PlotAsk
from onewhole.statements.row import Sign
from onewhole.statements.wording import FactorWords, GroupWords, Phrase

_SMALL = (
    "zero", "um", "dois", "três", "quatro", "cinco", "seis", "sete", "oito", "nove", "dez", "onze", "doze",
    "treze", "quatorze", "quinze", "dezesseis", "dezessete", "dezoito", "dezenove",
)  # fmt: skip
_TENS = ("vinte", "trinta", "quarenta", "cinquenta", "sessenta", "setenta", "oitenta", "noventa")
_HUNDREDS = (
    "cento", "duzentos", "trezentos", "quatrocentos", "quinhentos", "seiscentos", "setecentos", "oitocentos",
    "novecentos",
)  # fmt: skip
_PIECES = {
    2: "meio", 3: "terço", 4: "quarto", 5: "quinto", 6: "sexto", 7: "sétimo", 8: "oitavo", 9: "nono",
    10: "décimo", 100: "centésimo", 1000: "milésimo",
}  # fmt: skip
_MASCULINE_IN_A = frozenset({"dia", "quilograma", "grama", "problema", "mapa"})
_HUNDRED, _THOUSAND, _MILLION = 100, 1000, 1_000_000


def _feminine(word: str) -> bool:
    head = word.partition(" ")[0].lower()
    return head not in _MASCULINE_IN_A and head.endswith(("a", "ção", "dade"))


def _count(count: int, of: Unit | Thing | None = None) -> str:
    """Say a count, as it agrees with what is counted: vinte e uma tiras, mil cento e cinco."""
    said = _words(count)
    if of is None or not _NUMBERS.is_feminine(of):
        return said
    agreeing = {"um": "uma", "dois": "duas"}
    words = (agreeing.get(one, f"{one[:-2]}as" if one.endswith("entos") else one) for one in said.split())
    return " ".join(words)


def _words(count: int) -> str:
    for worth, one, many in ((_MILLION, "milhão", "milhões"), (_THOUSAND, "mil", "mil")):
        if count >= worth:
            high, rest = divmod(count, worth)
            front = one if (high, worth) == (1, _THOUSAND) else f"{_words(high)} {one if high == 1 else many}"
            joined = " e " if rest < _HUNDRED or not rest % _HUNDRED else " "
            return f"{front}{joined}{_words(rest)}" if rest else front
    if count == _HUNDRED:
        return "cem"
    if count < len(_SMALL):
        return _SMALL[count]
    high, rest = divmod(count, _HUNDRED if count > _HUNDRED else 10)
    front = _HUNDREDS[high - 1] if count > _HUNDRED else _TENS[high - 2]
    return f"{front} e {_words(rest)}" if rest else front


def _pieces(parts: int, count: int) -> str:
    """Name pieces: sextos, um meio, doze avos."""
    if parts not in _PIECES:
        return f"{_words(parts)} avos"
    return _PIECES[parts] if count == 1 else f"{_PIECES[parts]}s"


_NUMBERS = NumberTables(
    counts=_count,
    pieces=_pieces,
    whole=Thing("inteiro", "inteiros"),
    measures={
        "mi": ("milha", "milhas"), "yd": ("jarda", "jardas"), "ft": ("pé", "pés"),
        "in": ("polegada", "polegadas"), "T": ("tonelada", "toneladas"), "lb": ("libra", "libras"),
        "oz": ("onça", "onças"), "gal": ("galão", "galões"), "qt": ("quarto de galão", "quartos de galão"),
        "pt": ("pinta", "pintas"), "c": ("xícara", "xícaras"), "fl oz": ("onça líquida", "onças líquidas"),
        "wk": ("semana", "semanas"), "d": ("dia", "dias"), "h": ("hora", "horas"),
        "min": ("minuto", "minutos"), "s": ("segundo", "segundos"), "km": ("quilômetro", "quilômetros"),
        "m": ("metro", "metros"), "cm": ("centímetro", "centímetros"), "mm": ("milímetro", "milímetros"),
        "kg": ("quilograma", "quilogramas"), "g": ("grama", "gramas"), "L": ("litro", "litros"),
        "mL": ("mililitro", "mililitros"), "$": ("dólar", "dólares"), "¢": ("centavo", "centavos"),
    },
    places={1: ("unidade", "unidades"), 10: ("dezena", "dezenas"), 100: ("centena", "centenas")},
    thousands=" de milhar",
    millions=" de milhão",
    feminine=_feminine,
    places_feminine=True,
    articles={"um": False, "o": False, "uma": True, "a": True},
    plurals=lambda word: f"{word}{'es' if word.endswith(('r', 'z', 's')) else 's'}",
    signs={
        Sign.PLUS: "mais", Sign.MINUS: "menos", Sign.TIMES: "vezes", Sign.EQUALS: "é igual a",
        Sign.LESS: "é menor que", Sign.GREATER: "é maior que", Sign.ABOUT: "é perto de", Sign.COMMA: ",",
        Sign.WHICH: "comparado com", Sign.OPEN: "abre parêntese", Sign.CLOSE: "fecha parêntese",
        Sign.OVER: "sobre", Sign.UNTIL: "até", Sign.DIVIDE: "dividido por", Sign.REMAINDER: "resto",
    },
    forms={
        NumberForm.SIMPLEST: "na forma mais simples",
        NumberForm.MIXED: "como número misto",
        NumberForm.FRACTION: "como fração",
        NumberForm.DECIMAL: "como decimal",
    },
    halves={"a.m.": "da manhã", "p.m.": "da tarde"},
    blank="em branco",
    joins="e", of="de",
    point="ponto",
    whole_number=Thing("número inteiro", "números inteiros", None),
    asks_order="coloque em ordem",
    asks_factors="fatores de", asks_multiples="múltiplos de",
    of_factors={
        FactorWords.IS_NEITHER: "não é primo nem composto", Phrase.PRIME_OR_COMPOSITE: "primo ou composto:",
        FactorWords.NO_MULTIPLE_OF: "não é múltiplo de", FactorWords.NEITHER: "nem primo nem composto",
        FactorWords.IS_MULTIPLE_OF: "é múltiplo de", Phrase.GROUPS_NEEDED: "grupos necessários:",
        FactorWords.NO_FACTOR_OF: "não é fator de", GroupWords.NEEDED: "grupos necessários",
        Phrase.GROUPS_FULL: "grupos completos:", FactorWords.IS_FACTOR_OF: "é fator de",
        FactorWords.IS_COMPOSITE: "é composto", GroupWords.FULL: "grupos completos", FactorWords.YES: "sim",
        Phrase.MULTIPLE_OF: "múltiplo de", FactorWords.COMPOSITE: "composto", FactorWords.IS_PRIME: "é primo",
        GroupWords.LEFT: "quantos sobram", FactorWords.OR_NOT: "ou não:", Phrase.GROUPS_LEFT: "sobram:",
        Phrase.FACTOR_OF: "fator de", FactorWords.PRIME: "primo", FactorWords.NO: "não",
    },
    asks_of_plot={
        PlotAsk.COUNT: "ache quantos são ao todo", PlotAsk.TOTAL: "ache o total",
        PlotAsk.SHARE: "ache quanto cada um tem se o total é repartido por igual",
        PlotAsk.MOST: "ache o valor mais comum", PlotAsk.SPREAD: "ache a diferença entre o maior e o menor",
    },
    bounds={
        Bound.EXACTLY: "que medem", Bound.MORE: "que medem mais de", Bound.LESS: "que medem menos de",
        Bound.AT_LEAST: "que medem pelo menos", Bound.AT_MOST: "que medem no máximo",
    },
    asks_round="arredonde",
    falling=("do maior", "ao menor"),
    rising=("do menor", "ao maior"),
    nearest=(("para o", "mais próximo"), ("para a", "mais próxima")),
    example="uma tira",
)  # fmt: skip

_HOME = HomeMessages(
    acts={
        Operation.SUBTRACT: "subtraímos um número de outro",
        Operation.ADD: "somamos números",
        Operation.COMPARE: "vemos qual número é maior",
        Operation.ORDER: "colocamos números em ordem",
        Operation.FIND: "procuramos um número que falta",
        Operation.ROUND: "arredondamos números",
        Operation.READ: "lemos gráficos de pontos",
        Operation.MULTIPLY: "multiplicamos",
        Operation.DIVIDE: "repartimos em partes iguais",
        Operation.RENAME: "escrevemos números de outra forma",
    },
    tonight="esta noite {act}",
    in_some="em alguns, {act}",
    opened=(
        "às vezes não há partes suficientes para tirar",
        "então {regroups}, {feminine:cortado/cortada} em partes iguais",
        "{one} tem {pieces}",
    ),
    alike=("é igual com as {tens}", "{ten} tem {ones}", "só escrevemos o número de outra forma"),
    known_from_taking="talvez você conheça isso como pedir emprestado",
    known_from_adding="talvez você conheça isso como vai um",
    wording="na aula dizemos {regroup}: a quantidade não muda",
    closing=(
        "não é preciso ensinar",
        "escutar ajuda",
        "se demorar muito, parem aí e mandem um bilhete para nós",
    ),
    enough_pieces="há partes suficientes para tirar",
    enough_in_places="há o suficiente em cada lugar para tirar",
    enough_smaller="há o suficiente da unidade pequena para tirar",
    size_for_all="que tamanho de parte serve para todas as frações",
    pieces_fill="as partes completam {one} ou mais",
    ten_in_a_place="há dez ou mais em algum lugar",
    smaller_make_larger="as unidades pequenas formam uma da grande",
    same_size="as partes são do mesmo tamanho",
    first_place="qual lugar você olha primeiro",
    first_unit="qual unidade você olha primeiro",
    groups="quantos grupos há e quanto tem cada um",
    shared="o que se reparte primeiro e o que se faz com o que sobra",
    other_way="de que outra forma você pode escrever a mesma quantidade",
    both_sides="que número faz os dois lados iguais",
    least="qual número é o menor e como você vê isso",
    each_mark="o que cada marca representa e de quais marcas se trata",
    between="entre quais dois números ele está e de qual está mais perto",
    pieces_in_one="quantas partes tem {one}",
    ones_in_ten="quantas {ones} tem {ten}",
    tenths_in_one="quantos {tenths} formam um inteiro",
    smaller_in_larger="quantas da unidade pequena formam uma da grande",
    first_guess="sua resposta parece com o que você pensou primeiro",
)

_REASONS = ReasonMessages(
    full_group=Thing("grupo completo", "grupos completos", None),
    opens_first="não há {smaller}|, por isso/por isso|primeiro {regroups}",
    opens_one="não há {smaller} suficientes para tirar {pieces}|, por isso/por isso|{regroups}",
    opens_to_match="{regroups} para ter mais {smaller}",
    one_is_worth="{larger} tem {pieces}",
    are_worth="{larger} {many:tem/têm} {pieces}",
    there_are_now="agora há {pieces}",
    put_together="{more} e {had} são {pieces}",
    full_groups="{pieces} formam {larger}|, e|há {groups}",
    makes_larger="{pieces} formam {larger}",
    written_together="escrito como sempre, é {result}",
    taken_each="tiramos {each}",
    each_from_each="{units} de {units}",
    added_each="juntamos {each}",
    each_with_each="{units} com {units}",
    pieces_taken="de {had} tiramos {taken}",
    pieces_added="somamos {had} e {more}",
    larger_first="primeiro o maior|:|tiramos {taken}",
    units_taken="{had} menos {taken} dá {left}",
    nothing_left="não sobra nada",
    left="{many:sobra/sobram} {left}",
    in_all="ao todo {many:é/são} {left}",
    so_far="até aqui {many:é/são} {left}",
    set_aside="separamos {pieces}|, e|tiramos de {wholes}",
    opened_to_take="{wholes} é a mesma quantidade que {opened}",
    taken_from_whole=("de {wholes} sobra {left}", "agora devolvemos o que separamos"),
    taken_all=("de {wholes} não sobra nada", "agora devolvemos o que separamos"),
    wholes_in_pieces="{larger} tem {pieces}|, por isso/por isso|contamos tudo em {smaller}",
    cut_again="cortamos cada parte outra vez para ter {smaller}",
    same_size_pieces="agora todas as partes são do mesmo tamanho|:|{smaller}",
    renamed="é a mesma quantidade, contada em {smaller}",
    shown="aqui estão: {amounts}",
    still_there="sobram: {amounts}",
    crossed_out="riscados: {amounts}",
    gathered="juntos: {amounts}",
    makes="{pieces} formam {larger}",
    cut_into="cortamos {larger} em {pieces}",
)

_FILM = FilmMessages(
    problem=Thing("problema", "problemas", None),
    whole=Thing("inteiro", "inteiros"),
    piece=Thing("parte", "partes", None, feminine=True),
    larger="uma unidade maior",
    tonight="Esta noite",
    the_end="Fim",
    hello="olá",
    hello_class="olá, {words}",
    date="hoje é {words}",
    title="esta página se chama {words}",
    count="esta noite há {problems}",
    one_whole="{whole} é {larger}",
    in_all="em todos estes",
    in_some="em {problems}",
    not_enough="não há {smaller} suficientes|, por isso/por isso|{regroups}",
    need_more="precisamos de mais {smaller}|, por isso/por isso|{regroups}",
    one_adds="olhe o sinal do problema {label}|:|ali se soma",
    one_takes="olhe o sinal do problema {label}|:|ali se subtrai",
    try_first="parem aqui e tentem resolver",
    your_turn=("agora é com vocês", "parem aqui e escrevam a resposta"),
    turn_written="Agora é com vocês",
    closing=(
        "esse foi o último",
        "se a sua resposta é outra|,|procure a linha onde ela muda",
        "boa noite e parabéns",
    ),
    tens=(
        "é igual com as dezenas",
        "{ten} tem {ones}|, e|{larger} tem {pieces}",
        "a quantidade não muda",
    ),
    problem_alone="problema {label}|:|{line}",
    problem_story="problema {label}",
    we_work="calculamos {line}",
    we_look_for="procuramos {line}",
    that_is="isso é {line}",
    now_we_have="agora temos {line}",
    taken="tiramos {pieces}",
    added="somamos {pieces}",
    then="depois {deed}",
    as_before="como no problema {label}, {deed}",
    answer="a resposta é {line}",
    so="por isso {line}",
    in_problem="no problema {label}, {line}",
    same_amount="{kept} é a mesma quantidade que {other}",
    one_fraction="como uma só fração, {kept} é {other}",
    may_stay="você pode deixar como {kept}",
    both_right="as duas formas estão certas",
    check="conferimos ao contrário|:|{line}",
)

PORTUGUESE = LanguageFile(
    tag="pt-BR",
    name="português",
    code="por",
    voice="pt-br",
    numbers=_NUMBERS,
    verbs={
        "regroup": ("reagrupamos", "reagrupar"),
        "open": ("abrimos", "abrir"),
        "trade": ("trocamos", "trocar"),
        "rename": ("escrevemos de outra forma", "escrever de outra forma"),
    },
    known={
        "strip": "uma tira", "strip of paper": "uma tira de papel", "bar": "uma barra", "pizza": "uma pizza",
        "strip of kite paper": "uma tira de papel", "box": "uma caixa", "circle": "um círculo",
    },
    page=replace(
        ROUND_PAGE,
        untitled="Frações",
        page_of="página {at} de {of}",
        for_home="Página para casa",
        how_we_do_it="Assim fazemos na aula",
        good_questions="Boas perguntas",
        film="Um vídeo mostra como fazemos:",
        film_code="Um código quadrado que a câmera de um telefone lê: abre o vídeo.",
    ),
    home=_HOME,
    reasons=_REASONS,
    film=_FILM,
).language  # fmt: skip
