### What things are called: cells and digits in lists, houses, marks, techniques, kinds of rules. A house has a genitive, an
### accusative (where it differs from the plain form) and “where”, the locative with its preposition (“у рядку”, “на діагоналі”).

# What the editor’s plain quotation marks become: outer pair, inner pair, with a space between them.
quotation-marks = « » „ “
# The letters in the order of a dictionary.
alphabet = а б в г ґ д е є ж з и і ї й к л м н о п р с т у ф х ц ч ш щ ь ю я

## Lists

list-more = { $most }, { $next }
list-and = { $most } і { $last }
list-or = { $most } або { $last }
# Cells that hold the same digit.
list-alike = { $most } як { $last }
# Clauses that hold commas or “and” themselves.
clauses-more = { $most }, { $next }
clauses-or = { $most } чи { $last }
clauses-and = { $most }, а { $last }

# How many things, in words as far as twelve; feminine, for most of what is counted is “клітинка”, “головоломка”, “цифра”.
# The genitive is the locative, too.
number = { $n ->
    [0] нуль
    [1] одна
    [2] дві
    [3] три
    [4] чотири
    [5] п’ять
    [6] шість
    [7] сім
    [8] вісім
    [9] дев’ять
    [10] десять
    [11] одинадцять
    [12] дванадцять
   *[other] { $n }
}
    .masculine = { $n ->
        [1] один
        [2] два
       *[other] { number }
    }
    .neuter = { $n ->
        [1] одне
        [2] два
       *[other] { number }
    }
    .genitive = { $n ->
        [0] нуля
        [1] однієї
        [2] двох
        [3] трьох
        [4] чотирьох
        [5] п’яти
        [6] шести
        [7] семи
        [8] восьми
        [9] дев’яти
        [10] десяти
        [11] одинадцяти
        [12] дванадцяти
       *[other] { $n }
    }

# Four digits in a row, or more.
digits-run = { $first }–{ $last }
candidate = { $digit } у клітинці { $cell }
placed = { $digits } в { $cells }
tried = { OR($digits) } у клітинці { OR($cells) }

## Houses

# Any house of the grid itself, by what the grid is divided into; in the locative, after “в одному”, “в іншому”.
house-any = { $divided ->
    [none] рядку чи стовпці
    [regions] рядку, стовпці чи області
   *[boxes] рядку, стовпці чи блоці
}
house-row = рядок { $number }
    .genitive = рядка { $number }
    .where = у рядку { $number }
    .short = р{ $number }
    .genitive-short = р{ $number }
    .where-short = у р{ $number }
house-column = стовпець { $number }
    .genitive = стовпця { $number }
    .where = у стовпці { $number }
    .short = с{ $number }
    .genitive-short = с{ $number }
    .where-short = у с{ $number }
house-region = область { $letter }
    .genitive = області { $letter }
    .where = в області { $letter }
house-box = { $place ->
    [middle-centre] середній блок
    [top-left] лівий верхній блок
    [top-centre] середній верхній блок
    [top-right] правий верхній блок
    [middle-left] лівий середній блок
    [middle-right] правий середній блок
    [bottom-left] лівий нижній блок
    [bottom-centre] середній нижній блок
    [bottom-right] правий нижній блок
   *[other] блок від клітинки { $cell }
}
    .genitive = { $place ->
        [middle-centre] середнього блока
        [top-left] лівого верхнього блока
        [top-centre] середнього верхнього блока
        [top-right] правого верхнього блока
        [middle-left] лівого середнього блока
        [middle-right] правого середнього блока
        [bottom-left] лівого нижнього блока
        [bottom-centre] середнього нижнього блока
        [bottom-right] правого нижнього блока
       *[other] блока від клітинки { $cell }
    }
    .where = { $place ->
        [middle-centre] у середньому блоці
        [top-left] у лівому верхньому блоці
        [top-centre] у середньому верхньому блоці
        [top-right] у правому верхньому блоці
        [middle-left] у лівому середньому блоці
        [middle-right] у правому середньому блоці
        [bottom-left] у лівому нижньому блоці
        [bottom-centre] у середньому нижньому блоці
        [bottom-right] у правому нижньому блоці
       *[other] у блоці від клітинки { $cell }
    }
# Houses that a rule adds.
house-of-rule = { $noun } від клітинки { $cell }
    .genitive = { CASE($noun, "genitive") } від клітинки { $cell }
    .accusative = { CASE($noun, "accusative") } від клітинки { $cell }
    .where = у { CASE($noun, "locative") } від клітинки { $cell }
house-diagonals-falling = спадна діагональ
    .genitive = спадної діагоналі
    .accusative = спадну діагональ
    .where = на спадній діагоналі
house-diagonals-rising = висхідна діагональ
    .genitive = висхідної діагоналі
    .accusative = висхідну діагональ
    .where = на висхідній діагоналі
house-disjoint-groups = набір клітинок № { $number } з кожного блока
    .genitive = набору клітинок № { $number } з кожного блока
    .where = у наборі клітинок № { $number } з кожного блока
house-disjoint-groups-of-nine = набір { house-disjoint-groups-of-nine.which } клітинок блоків
    .which = { $n ->
        [1] лівих верхніх
        [2] середніх верхніх
        [3] правих верхніх
        [4] лівих середніх
        [5] середніх
        [6] правих середніх
        [7] лівих нижніх
        [8] середніх нижніх
       *[9] правих нижніх
    }
    .genitive = набору { house-disjoint-groups-of-nine.which } клітинок блоків
    .where = у наборі { house-disjoint-groups-of-nine.which } клітинок блоків
house-windows-rows = частина рядків { $number }–{ $last } поза вікнами
    .genitive = частини рядків { $number }–{ $last } поза вікнами
    .accusative = частину рядків { $number }–{ $last } поза вікнами
    .where = у частині рядків { $number }–{ $last } поза вікнами
    .short = частина р{ $number }–{ $last } поза вікнами
    .genitive-short = частини р{ $number }–{ $last } поза вікнами
    .accusative-short = частину р{ $number }–{ $last } поза вікнами
    .where-short = у частині р{ $number }–{ $last } поза вікнами
house-windows-columns = частина стовпців { $number }–{ $last } поза вікнами
    .genitive = частини стовпців { $number }–{ $last } поза вікнами
    .accusative = частину стовпців { $number }–{ $last } поза вікнами
    .where = у частині стовпців { $number }–{ $last } поза вікнами
    .short = частина с{ $number }–{ $last } поза вікнами
    .genitive-short = частини с{ $number }–{ $last } поза вікнами
    .accusative-short = частину с{ $number }–{ $last } поза вікнами
    .where-short = у частині с{ $number }–{ $last } поза вікнами
house-windows-crossing = перетин рядків і стовпців між вікнами
    .genitive = перетину рядків і стовпців між вікнами
    .where = на перетині рядків і стовпців між вікнами
houses-row = рядки { $numbers }
    .genitive = рядків { $numbers }
    .where = у рядках { $numbers }
    .short = р{ $numbers }
    .genitive-short = р{ $numbers }
    .where-short = у р{ $numbers }
houses-column = стовпці { $numbers }
    .genitive = стовпців { $numbers }
    .where = у стовпцях { $numbers }
    .short = с{ $numbers }
    .genitive-short = с{ $numbers }
    .where-short = у с{ $numbers }
whole-grid = уся сітка
# After “row”, “column”, or “rows” with several numbers, where grids overlap.
line-in-grid = { $number } сітки { $grid }

## Marks, by where they are anchored. The gender “plural” tells that a verb is in the plural.

mark-line = { $noun } { $first }–{ $last }
mark-at = { $value ->
    [none] { $noun } в клітинці { $cell }
   *[other] { $noun } { $value } у клітинці { $cell }
}
mark-between = { $value ->
    [none] { $noun } між клітинками { $one } і { $other }
   *[other] { $noun } { $value } між клітинками { $one } і { $other }
}
mark-between-missing = межа без { CASE($noun, "genitive") } між клітинками { $one } і { $other }
    .gender = feminine
# Where a clue outside the grid stands.
beside-line = { $side ->
    [left] ліворуч від рядка { $line }
    [right] праворуч від рядка { $line }
    [top] над стовпцем { $line }
   *[bottom] під стовпцем { $line }
}
    .short = { $side ->
        [left] ліворуч від р{ $line }
        [right] праворуч від р{ $line }
        [top] над с{ $line }
       *[bottom] під с{ $line }
    }
mark-outside = { $noun } { $value } { $where }
mark-slanting = { $noun } { $value } від клітинки { $start } { $way ->
    [down-right] униз праворуч
    [down-left] униз ліворуч
    [up-right] угору праворуч
   *[up-left] угору ліворуч
}
mark-lettered = { $noun } { $letter }
mark-joined = { $nouns } між клітинками { $cells }
    .gender = plural
mark-whole = { $noun }
# A mark that was named just before.
mark-again = { GENDER($noun) ->
    [feminine] та сама
    [neuter] те саме
   *[masculine] той самий
} { $noun }
# All marks of a kind.
marks = { $nouns }

## Marks that are called otherwise

marks-king = хід короля
marks-knight = хід коня
marks-non-consecutive = заборона послідовних цифр
mark-non-consecutive = межа між клітинками { $one } і { $other }
mark-non-consecutive-whole = заборона послідовних цифр
mark-border-values-sum = сума { $value } між клітинками { $one } і { $other }
    .gender = feminine
mark-border-values-difference = різниця { $value } між клітинками { $one } і { $other }
    .gender = feminine
mark-border-values-product = добуток { $value } між клітинками { $one } і { $other }
    .gender = masculine
mark-border-values-quotient = частка { $value } між клітинками { $one } і { $other }
    .gender = feminine
mark-border-values-missing = межа без числа між клітинками { $one } і { $other }
    .gender = feminine
mark-non-consecutive-corner = кут між клітинками { $one } і { $other }
    .gender = masculine
marks-no-doubles = заборона подвоєнь
mark-no-doubles = межа між клітинками { $one } і { $other }
mark-no-doubles-corner = кут між клітинками { $one } і { $other }
    .gender = masculine
mark-no-doubles-whole = заборона подвоєнь
marks-barred-sums = заборона сум
mark-barred-sums = межа між клітинками { $one } і { $other }
mark-barred-sums-corner = кут між клітинками { $one } і { $other }
    .gender = masculine
mark-barred-sums-whole = заборона сум
mark-dots-white = біла крапка між клітинками { $one } і { $other }
mark-dots-black = чорна крапка між клітинками { $one } і { $other }
mark-sum-marks-V = знак V між клітинками { $one } і { $other }
mark-sum-marks-X = знак X між клітинками { $one } і { $other }
mark-sum-marks-missing = межа без V і X між клітинками { $one } і { $other }
    .gender = feminine
mark-rise-or-fall-rise = підйом { $where }
mark-rise-or-fall-fall = спуск { $where }
mark-rise-or-fall-missing = кінець без смужок { $where }
mark-rising-run-joined = висхідні серії через клітинки { $cells }
    .gender = plural
mark-parity-run-joined = серії парності з обох боків клітинок { $cells }
    .gender = plural
mark-rise-or-fall-joined = підйоми й спуски через клітинки { $cells }
    .gender = plural
mark-inequality = знак між клітинками { $one } і { $other }
mark-inequality-joined = знаки між клітинками { $cells }
    .gender = plural
mark-limits-joined = обмеження в клітинках { $cells }
    .gender = plural
mark-fortress-joined = фортеці при клітинках { $cells }
    .gender = plural
mark-pointing = стрілка в клітинці { $cell }
mark-parity-even = квадрат у клітинці { $cell }
    .gender = masculine
mark-parity-odd = круг у клітинці { $cell }
    .gender = masculine
mark-parity-joined = парні й непарні клітинки серед { $cells }
    .gender = plural
mark-peaks-greater = дашок у клітинці { $cell }
mark-peaks-smaller = чаша в клітинці { $cell }
    .gender = feminine
mark-peaks-joined = дашки й чаші в клітинках { $cells }
    .gender = plural
mark-cage-joined = рамки на клітинках { $cells }
    .gender = plural
mark-arithmetic-cage = арифметична рамка { $value } у клітинці { $cell }
mark-arithmetic-cage-joined = арифметичні рамки на клітинках { $cells }
    .gender = plural
mark-counting-area = лічильна ділянка { $value } у клітинці { $cell }
mark-square-block-magic = магічний квадрат у клітинці { $cell }
mark-open-cage-even = відкрита парна рамка в клітинці { $cell }
mark-open-cage-odd = відкрита непарна рамка в клітинці { $cell }
mark-open-cage-lettered = набір рамок { $letter }
    .gender = masculine

## Techniques: plainly, one of them, several ($count in words)

technique-last-cell = остання вільна клітинка
    .one = остання вільна клітинка
    .many = { $count } { COUNT($count) ->
        [one] остання вільна клітинка
        [few] останні вільні клітинки
       *[other] останніх вільних клітинок
    }
technique-hidden-single = прихований одинак
    .one = прихований одинак
    .many = { CASE($count, "masculine") } { COUNT($count) ->
        [one] прихований одинак
        [few] приховані одинаки
       *[other] прихованих одинаків
    }
technique-naked-single = відкритий одинак
    .one = відкритий одинак
    .many = { CASE($count, "masculine") } { COUNT($count) ->
        [one] відкритий одинак
        [few] відкриті одинаки
       *[other] відкритих одинаків
    }
technique-locked-candidates = замкнена цифра
    .one = замкнена цифра
    .many = { $count } { COUNT($count) ->
        [one] замкнена цифра
        [few] замкнені цифри
       *[other] замкнених цифр
    }
technique-naked-pair = відкрита пара
    .one = відкрита пара
    .many = { $count } { COUNT($count) ->
        [one] відкрита пара
        [few] відкриті пари
       *[other] відкритих пар
    }
technique-naked-triple = відкрита трійка
    .one = відкрита трійка
    .many = { $count } { COUNT($count) ->
        [one] відкрита трійка
        [few] відкриті трійки
       *[other] відкритих трійок
    }
technique-naked-quad = відкрита четвірка
    .one = відкрита четвірка
    .many = { $count } { COUNT($count) ->
        [one] відкрита четвірка
        [few] відкриті четвірки
       *[other] відкритих четвірок
    }
technique-hidden-pair = прихована пара
    .one = прихована пара
    .many = { $count } { COUNT($count) ->
        [one] прихована пара
        [few] приховані пари
       *[other] прихованих пар
    }
technique-hidden-triple = прихована трійка
    .one = прихована трійка
    .many = { $count } { COUNT($count) ->
        [one] прихована трійка
        [few] приховані трійки
       *[other] прихованих трійок
    }
technique-hidden-quad = прихована четвірка
    .one = прихована четвірка
    .many = { $count } { COUNT($count) ->
        [one] прихована четвірка
        [few] приховані четвірки
       *[other] прихованих четвірок
    }
technique-x-wing = X-крило
    .one = X-крило
    .many = { CASE($count, "neuter") } { COUNT($count) ->
        [one] X-крило
        [few] X-крила
       *[other] X-крил
    }
technique-swordfish = меч-риба
    .one = меч-риба
    .many = { $count } { COUNT($count) ->
        [one] меч-риба
        [few] меч-риби
       *[other] меч-риб
    }
technique-jellyfish = медуза
    .one = медуза
    .many = { $count } { COUNT($count) ->
        [one] медуза
        [few] медузи
       *[other] медуз
    }
technique-finned-x-wing = X-крило з плавцем
    .one = X-крило з плавцем
    .many = { CASE($count, "neuter") } { COUNT($count) ->
        [one] X-крило
        [few] X-крила
       *[other] X-крил
    } з плавцем
technique-finned-swordfish = меч-риба з плавцем
    .one = меч-риба з плавцем
    .many = { $count } { COUNT($count) ->
        [one] меч-риба
        [few] меч-риби
       *[other] меч-риб
    } з плавцем
technique-finned-jellyfish = медуза з плавцем
    .one = медуза з плавцем
    .many = { $count } { COUNT($count) ->
        [one] медуза
        [few] медузи
       *[other] медуз
    } з плавцем
technique-xy-wing = XY-крило
    .one = XY-крило
    .many = { CASE($count, "neuter") } { COUNT($count) ->
        [one] XY-крило
        [few] XY-крила
       *[other] XY-крил
    }
technique-xyz-wing = XYZ-крило
    .one = XYZ-крило
    .many = { CASE($count, "neuter") } { COUNT($count) ->
        [one] XYZ-крило
        [few] XYZ-крила
       *[other] XYZ-крил
    }
technique-w-wing = W-крило
    .one = W-крило
    .many = { CASE($count, "neuter") } { COUNT($count) ->
        [one] W-крило
        [few] W-крила
       *[other] W-крил
    }
technique-single-digit-chain = ланцюжок однієї цифри
    .one = ланцюжок однієї цифри
    .many = { CASE($count, "masculine") } { COUNT($count) ->
        [one] ланцюжок
        [few] ланцюжки
       *[other] ланцюжків
    } однієї цифри
technique-alternating-chain = почерговий ланцюжок
    .one = почерговий ланцюжок
    .many = { CASE($count, "masculine") } { COUNT($count) ->
        [one] почерговий ланцюжок
        [few] почергові ланцюжки
       *[other] почергових ланцюжків
    }
technique-seen-by-all-places = клітинка, яку видно з усіх місць цифри
    .one = клітинка, яку видно з усіх місць цифри
    .many = { $count } { COUNT($count) ->
        [one] клітинка
        [few] клітинки
       *[other] клітинок
    }, які видно з усіх місць цифри
technique-extended-chain = розширений ланцюжок
    .one = розширений ланцюжок
    .many = { CASE($count, "masculine") } { COUNT($count) ->
        [one] розширений ланцюжок
        [few] розширені ланцюжки
       *[other] розширених ланцюжків
    }
technique-either-way = цифра, виключена в кожному випадку
    .one = цифра, виключена в кожному випадку
    .many = { $count } { COUNT($count) ->
        [one] цифра, виключена
        [few] цифри, виключені
       *[other] цифр, виключених
    } в кожному випадку
technique-what-if = припущення
    .one = припущення
    .many = { CASE($count, "neuter") } { COUNT($count) ->
        [one] припущення
        [few] припущення
       *[other] припущень
    }
technique-beyond = крок поза драбиною прийомів
    .one = крок поза драбиною прийомів
    .many = { CASE($count, "masculine") } { COUNT($count) ->
        [one] крок
        [few] кроки
       *[other] кроків
    } поза драбиною прийомів

## Kinds of rules: one mark, several, the heading. Genitive, accusative and locative are for those that houses are named by; “межа без
## крапки”, too.

kind-arithmetic-cage = арифметична рамка
    .many = арифметичні рамки
    .title = Арифметичні рамки
    .gender = feminine
kind-arrow = стрілка
    .many = стрілки
    .title = Стрілки
    .gender = feminine
kind-barred-sums = заборона сум
    .many = заборони сум
    .title = Заборонені суми
    .gender = feminine
kind-border-values = число на межі
    .many = числа на межах
    .title = Числа на межах клітинок
    .gender = neuter
kind-bounded-line = обмежена лінія
    .many = обмежені лінії
    .title = Обмежені лінії
    .gender = feminine
kind-cage = рамка
    .many = рамки
    .title = Рамки
    .gender = feminine
kind-clone = клон
    .many = клони
    .title = Клони
    .gender = masculine
kind-consecutive-bars = риска
    .many = риски
    .title = Риски послідовних цифр
    .gender = feminine
    .genitive = риски
kind-consecutive-line = лінія послідовних цифр
    .many = лінії послідовних цифр
    .title = Лінії послідовних цифр
    .gender = feminine
kind-counting-area = лічильна ділянка
    .many = лічильні ділянки
    .title = Лічильні ділянки
    .gender = feminine
kind-diagonal-sum = діагональна сума
    .many = діагональні суми
    .title = Діагональні суми
    .gender = feminine
kind-diagonals = діагональ
    .many = діагоналі
    .title = Діагоналі
    .gender = feminine
    .genitive = діагоналі
    .locative = діагоналі
kind-difference-line = лінія різниць
    .many = лінії різниць
    .title = Лінії різниць
    .gender = feminine
kind-disjoint-groups = набір клітинок
    .many = набори клітинок
    .title = Однакові місця в блоках
    .gender = masculine
    .genitive = набору клітинок
    .locative = наборі клітинок
kind-dots = крапка
    .many = крапки
    .title = Крапки
    .gender = feminine
    .genitive = крапки
kind-equal-part-line = лінія рівних частин
    .many = лінії рівних частин
    .title = Лінії рівних частин
    .gender = feminine
kind-even-step-line = лінія рівних кроків
    .many = лінії рівних кроків
    .title = Лінії рівних кроків
    .gender = feminine
kind-extra-region = додаткова область
    .many = додаткові області
    .title = Додаткові області
    .gender = feminine
    .genitive = додаткової області
    .accusative = додаткову область
    .locative = додатковій області
kind-first-seen = підказка з краю
    .many = підказки з краю
    .title = Цифри з краю
    .gender = feminine
kind-fortress = фортеця
    .many = фортеці
    .title = Фортеці
    .gender = feminine
kind-frame-product = добуток з краю
    .many = добутки з краю
    .title = Добутки з краю
    .gender = masculine
kind-frame-sum = сума з краю
    .many = суми з краю
    .title = Суми з краю
    .gender = feminine
kind-hinge-line = шарнірна лінія
    .many = шарнірні лінії
    .title = Шарнірні лінії
    .gender = feminine
kind-inequality = знак нерівності
    .many = знаки нерівності
    .title = Нерівності
    .gender = masculine
kind-king = хід короля
    .many = ходи короля
    .title = Хід короля
    .gender = masculine
kind-knight = хід коня
    .many = ходи коня
    .title = Хід коня
    .gender = masculine
kind-limits = обмеження
    .many = обмеження
    .title = Обмеження
    .gender = neuter
kind-low-high-line = лінія малих і великих цифр
    .many = лінії малих і великих цифр
    .title = Лінії малих і великих цифр
    .gender = feminine
kind-no-doubles = заборона подвоєнь
    .many = заборони подвоєнь
    .title = Без подвоєнь
    .gender = feminine
kind-non-consecutive = заборона послідовних цифр
    .many = заборони послідовних цифр
    .title = Без послідовних цифр поруч
    .gender = feminine
kind-numbered-room = нумерована кімната
    .many = нумеровані кімнати
    .title = Нумеровані кімнати
    .gender = feminine
kind-open-cage = відкрита рамка
    .many = відкриті рамки
    .title = Відкриті рамки
    .gender = feminine
kind-palindrome = паліндром
    .many = паліндроми
    .title = Паліндроми
    .gender = masculine
kind-parity = парна чи непарна клітинка
    .many = парні й непарні клітинки
    .title = Парні й непарні
    .gender = feminine
kind-parity-line = лінія парності
    .many = лінії парності
    .title = Лінії парності
    .gender = feminine
kind-parity-run = серія парності
    .many = серії парності
    .title = Серії парності
    .gender = feminine
kind-peaks = дашок або чаша
    .many = дашки й чаші
    .title = Горби й западини
    .gender = masculine
kind-pointing = клітинка зі стрілкою
    .many = клітинки зі стрілками
    .title = Клітинки зі стрілками
    .gender = feminine
kind-quadruple = кільце
    .many = кільця
    .title = Кільця на кутах
    .gender = neuter
kind-resting-thermometer = термометр із паузами
    .many = термометри з паузами
    .title = Термометри з паузами
    .gender = masculine
kind-rise-or-fall = підйом або спуск
    .many = підйоми й спуски
    .title = Підйоми й спуски
    .gender = masculine
kind-rising-run = висхідна серія
    .many = висхідні серії
    .title = Висхідні серії
    .gender = feminine
kind-same-sum-line = лінія рівних сум
    .many = лінії рівних сум
    .title = Лінії рівних сум
    .gender = feminine
kind-sandwich = сума сендвіча
    .many = суми сендвічів
    .title = Суми сендвічів
    .gender = feminine
kind-skyscraper = кількість хмарочосів
    .many = кількості хмарочосів
    .title = Хмарочоси
    .gender = feminine
kind-square-block = квадрат рівних сум
    .many = квадрати рівних сум
    .title = Квадрати рівних сум
    .gender = masculine
kind-sum-marks = знак суми
    .many = знаки сум
    .title = Знаки сум
    .gender = masculine
kind-thermometer = термометр
    .many = термометри
    .title = Термометри
    .gender = masculine
kind-windows = вікно
    .many = вікна
    .title = Вікна
    .gender = neuter
    .genitive = вікна
    .locative = вікні
kind-x-sum = X-сума
    .many = X-суми
    .title = X-суми
    .gender = feminine
