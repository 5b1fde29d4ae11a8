### What a presenter says. Attributes are further wordings, taken in turn.

## What lies on the table

table-boxes = Сітка { $size }×{ $size } { $givens ->
    [0] без заданих цифр
    [1] з однією заданою цифрою
   *[other] із { $givens } заданими цифрами
}.
table-irregular = Сітка { $size }×{ $size } з нерегулярними областями, { $givens ->
    [0] без заданих цифр
    [1] з однією заданою цифрою
   *[other] із { $givens } заданими цифрами
}. Області позначено літерами від A в тому порядку, у якому вони трапляються в рядках.
table-none = Латинський квадрат { $size }×{ $size }, { $givens ->
    [0] без заданих цифр
    [1] з однією заданою цифрою
   *[other] із { $givens } заданими цифрами
}.
table-overlap = { $grids } { COUNT($grids) ->
    [few] сітки
   *[other] сіток
} { $size }×{ $size } з перекриттям, { $givens ->
    [0] без заданих цифр
    [1] з однією заданою цифрою
   *[other] із { $givens } заданими цифрами
}.
table-holes = Сітка { $size }×{ $size } із чорними клітинками, { $givens ->
    [0] без заданих цифр
    [1] з однією заданою цифрою
   *[other] із { $givens } заданими цифрами
}.
symmetry = { $turn } переводить головоломку саму в себе, тому більшість кроків трапляється парами.
symmetry-relabelled = { $turn }, причому { $cycles }, переводить головоломку саму в себе, тому більшість кроків трапляється парами.
cycle-swapped = { $digits } міняються місцями
cycle-round = { $digits } по черзі переходять одна в одну
turn-half = поворот на 180°
turn-left-right = відбиття відносно вертикальної осі
turn-top-bottom = відбиття відносно горизонтальної осі
turn-falling = відбиття відносно діагоналі з лівого верхнього кута
turn-rising = відбиття відносно діагоналі з правого верхнього кута
turn-quarter = поворот на 90°
turn-quarter-right = поворот на 90° праворуч
turn-quarter-left = поворот на 90° ліворуч

introduction-singles-crux = Рівень «{ $band }»: досить одинаків, а важкий момент настає при { $filled } заповнених клітинках.
introduction-singles-crux-at-start = Рівень «{ $band }»: досить одинаків, а важкий момент настає на самому початку.
introduction-singles-bottlenecks = Рівень «{ $band }»: досить одинаків, хоча подекуди буває вузько.
introduction-singles-choice = Рівень «{ $band }»: досить одинаків, а на вибір завжди щонайменше { CASE($choice, "masculine") }.
introduction-singles = Рівень «{ $band }»: досить одинаків, і жодного з них не доведеться довго шукати.
introduction-stuck-crux = Рівень «{ $band }»: одинаки закінчуються { $times }, а важкий момент настає при { $filled } заповнених клітинках.
introduction-stuck-crux-at-start = Рівень «{ $band }»: одинаки закінчуються { $times }, а важкий момент настає на самому початку.
introduction-stuck = Рівень «{ $band }»: одинаки закінчуються { $times }.
introduction-stuck-briefly = Рівень «{ $band }»: одинаки закінчуються { $times }, але щоразу ненадовго.
times = { $n ->
    [1] один раз
    [2] двічі
    [3] тричі
    [few] { CASE($number, "masculine") } рази
   *[other] { $number } разів
}

## Placements

places-last-of-digit = Остання цифра { $digit } йде в { $cell }.
    .b = { CASE($house, "where") } остання цифра { $digit } займає { $cell }.
places-last-cell = В останню клітинку { CASE($house, "genitive") }, { $cell }, йде { $digit }.
    .b = { CASE($house, "where") } бракує тільки цифри { $digit }, яка йде в { $cell }.
    .c = { CASE($house, "accusative") } замикає { $digit } у { $cell }.
places-naked-single = У { $cell } може стояти тільки { $digit }.
    .b = У { $cell } не підходить нічого, крім { $digit }.
places-hidden-single = { CASE($house, "where") } цифра { $digit } можлива тільки в { $cell }.
    .b = { $house } має одне місце для { $digit }: { $cell }.
    .c = Цифра { $digit } { CASE($house, "where") } йде в { $cell }.
# The same where more of the passage stands before it.
then-last-of-digit = Потім остання цифра { $digit } йде в { $cell }.
    .b = { CASE($house, "where") } остання цифра { $digit } займає { $cell }.
then-last-cell = В останню клітинку { CASE($house, "genitive") }, { $cell }, йде { $digit }.
    .b = { CASE($house, "where") } бракує вже тільки цифри { $digit }, яка йде в { $cell }.
    .c = { CASE($house, "accusative") } замикає { $digit } у { $cell }.
    .d = Далі в останню клітинку { CASE($house, "genitive") }, { $cell }, йде { $digit }.
then-naked-single = Тепер у { $cell } може стояти тільки { $digit }.
    .b = У { $cell } не підходить нічого, крім { $digit }.
then-hidden-single = { CASE($house, "where") } цифра { $digit } можлива тільки в { $cell }.
    .b = Тепер { $house } має одне місце для { $digit }: { $cell }.
    .c = Цифра { $digit } { CASE($house, "where") } йде в { $cell }.
    .d = Далі { CASE($house, "where") } цифра { $digit } можлива тільки в { $cell }.

leaves-last-cell = Отже, для { $cell }, останньої клітинки { CASE($house, "genitive") }, лишається { $digit }.
leaves-naked-single = Отже, у { $cell } лишається тільки { $digit }.
    .b = Тоді в { $cell } мусить стояти { $digit }.
leaves-hidden-single = Отже, цифрі { $digit } { CASE($house, "where") } лишається { $cell }.
    .b = { CASE($house, "where") } для { $digit } лишається вже тільки { $cell }.
    .c = Тому цифра { $digit } { CASE($house, "where") } мусить стояти в { $cell }.

opens-last-cell = Остання вільна клітинка { CASE($house, "genitive") } — { $cell }; туди йде { $digit }.
opens-naked-single = У клітинці { $cell } лишається сама цифра { $digit }.
    .b = Тепер у клітинці { $cell } може стояти тільки { $digit }.
opens-hidden-single = Єдиним місцем для { $digit } { CASE($house, "where") } лишається клітинка { $cell }.
    .b = Тепер { $house } має одне місце для { $digit }: { $cell }.
    .c = Завдяки цьому цифра { $digit } { CASE($house, "where") } йде в клітинку { $cell }.
    .d = Отже, { CASE($house, "where") } цифра { $digit } стоїть у клітинці { $cell }.

run-starts = Для початку цифра { $digit }: { $cells }.
run-completes = Останні цифри { $digit } йдуть у { $cells }.
    .b = Бракує ще { COUNT($count) ->
        [1] однієї цифри { $digit }, яка йде
       *[other] { CASE($count, "genitive") } цифр { $digit }, які йдуть
    } у { $cells }.
    .c = Усі цифри { $digit } довершують { $cells }.
run-chained = Одна цифра { $digit } веде до наступної: { $cells }.
    .b = Цифри { $digit } випливають одна з одної: { $cells }.
run-band = Перегляд цифр { $digit } у { $band } дає { $cells }.
    .b = У { $band } цифри { $digit } йдуть у { $cells }.
run = Далі цифра { $digit }: { $cells }.
    .b = Перегляд цифр { $digit } дає { $cells }.
    .c = Потім цифра { $digit }: { $cells }.
    .d = Наступні цифри { $digit } йдуть у { $cells }.
# In the locative, behind “у”.
band-top = верхній смузі блоків
band-middle = середній смузі блоків
band-bottom = нижній смузі блоків
band-left = лівому стовпчику блоків
band-centre = середньому стовпчику блоків
band-right = правому стовпчику блоків
fills = { $house } заповнюється до кінця: { $placed }.
    .b = { CASE($house, "accusative") } доповнює { $placed }.

with-image-last-cell = В останню клітинку { CASE($house, "genitive") }, { $cell }, йде { $digit }, а за симетрією в { $image } йде { $other }.
with-image-naked-single = У { $cell } може стояти тільки { $digit }, а за симетрією в { $image } тільки { $other }.
with-image-hidden-single = { CASE($house, "where") } цифра { $digit } можлива тільки в { $cell }, а за симетрією { $other } йде в { $image }.
run-with-images = Цифра { $digit } йде в { $cells }, а за симетрією { $other } в { $images }.
run-with-images-alike = Цифра { $digit } йде в { $cells }, а за симетрією також у { $images }.

starts-here = Починаємо тут.
starts-in-house = Для початку цифра { $digit } { CASE($house, "where") }: { COUNT($lookers) ->
    [1] цифра { $digit } у клітинці { $lookers } лишає
   *[other] цифри { $digit } у клітинках { $lookers } лишають
} тільки клітинку { $cell }.
seen-last-cell = { CASE($house, "where") } бракує тільки цифри { $digit }, яка йде в клітинку { $cell }.
seen-lookers = { COUNT($lookers) ->
    [1] Цифра { $digit } у клітинці { $lookers } лишає
   *[other] Цифри { $digit } у клітинках { $lookers } лишають
} { CASE($house, "where") } для { $digit } тільки клітинку { $cell }.
seen-lookers-struck = { COUNT($lookers) ->
    [1] Цифра { $digit } у клітинці
   *[other] Цифри { $digit } у клітинках
} { $lookers } та попередні викреслення лишають { CASE($house, "where") } для { $digit } тільки клітинку { $cell }.
seen-lookers-marked = { COUNT($lookers) ->
    [1] Цифра { $digit } у клітинці
   *[other] Цифри { $digit } у клітинках
} { $lookers } та позначки лишають { CASE($house, "where") } для { $digit } тільки клітинку { $cell }.
seen-lookers-struck-marked = { COUNT($lookers) ->
    [1] Цифра { $digit } у клітинці
   *[other] Цифри { $digit } у клітинках
} { $lookers }, позначки та попередні викреслення лишають { CASE($house, "where") } для { $digit } тільки клітинку { $cell }.
seen-struck = Попередні викреслення лишають { CASE($house, "where") } для { $digit } тільки клітинку { $cell }.
seen-marked = Позначки лишають { CASE($house, "where") } для { $digit } тільки клітинку { $cell }.
seen-struck-marked = Позначки та попередні викреслення лишають { CASE($house, "where") } для { $digit } тільки клітинку { $cell }.
seen-in-cell = { $held }, тому в клітинці { $cell } може стояти тільки { $digit }.
held-first = { $house } вже має { $digits }
held-next = { $house } має { $digits }
held-first-others = інші видимі клітинки вже мають { $digits }
held-next-others = інші видимі клітинки мають { $digits }
held-struck = раніше { COUNT($digits) ->
    [1] зникла
   *[other] зникли
} { $digits } ({ $steps })
held-marked = позначка цієї клітинки виключає { $digits }

fixes = { $marks } відразу { $many ->
    [yes] визначають
   *[no] визначає
} { $count ->
    [1] одну клітинку
    [one] { $number } клітинку
    [few] { $number } клітинки
   *[other] { $number } клітинок
}: { $placed }.
taken-from-proof = Тут драбина прийомів закінчується; з доведення взято { $placed }.
falls-into-place = Звідси все складається саме собою: { $placed }.
    .b = Решта складається сама собою: { $placed }.
remains = Лишається { $placed }.
ending-more = { $most }, { $next }
ending-last = { $most }, а наприкінці { $last }

## Where it gets narrow

few-lone-naked = Увага: при { $filled } заповнених клітинках єдиний одинак — відкритий.
    .b = При { $filled } заповнених клітинках лишається один відкритий одинак і більше нічого.
    .c = При { $filled } заповнених клітинках є тільки один одинак, і той відкритий.
few-naked = При { $filled } заповнених клітинках { COUNT($number) ->
    [few] лишаються тільки { CASE($number, "masculine") } відкриті одинаки
   *[other] лишається тільки { $number } відкритих одинаків
}.
    .b = { COUNT($number) ->
        [few] { CASE($number, "masculine") } відкриті одинаки — це все, що є
       *[other] { $number } відкритих одинаків — це все, що є
    } при { $filled } заповнених клітинках.
few = Придивіться: при { $filled } заповнених клітинках { $singles ->
    [1] є тільки один одинак
    [few] є тільки { CASE($number, "masculine") } одинаки
   *[other] є тільки { $number } одинаків
}.
    .b = При { $filled } заповнених клітинках { $singles ->
        [1] лишається всього один одинак
        [few] лишаються всього { CASE($number, "masculine") } одинаки
       *[other] лишається всього { $number } одинаків
    }.
crux-lone-naked = Тепер важкий момент: при { $filled } заповнених клітинках єдиний одинак — відкритий.
crux-naked = Тепер важкий момент: при { $filled } заповнених клітинках { COUNT($number) ->
    [few] лишаються тільки { CASE($number, "masculine") } відкриті одинаки
   *[other] лишається тільки { $number } відкритих одинаків
}.
crux-few = Тепер важкий момент: при { $filled } заповнених клітинках { $singles ->
    [1] є тільки один одинак
    [few] є тільки { CASE($number, "masculine") } одинаки
   *[other] є тільки { $number } одинаків
}.
stuck = При { $filled } заповнених клітинках не лишається жодного одинака.
    .b = При { $filled } заповнених клітинках одинаки закінчуються.
    .c = При { $filled } заповнених клітинках одинаків більше немає.
stuck-at-start = На початку немає жодного одинака.
# What it takes is listed in the nominative.
stuck-long = При { $filled } заповнених клітинках не лишається жодного одинака. Ось що допоможе далі: { $steps }.
    .b = При { $filled } заповнених клітинках одинаки закінчуються. Ось що допоможе: { $steps }.
stuck-long-at-start = На початку немає жодного одинака. Ось що допоможе: { $steps }.
crux = Тепер важкий момент: при { $filled } заповнених клітинках одинаків більше немає. Ось що допоможе: { $steps }.
crux-at-start = Тепер важкий момент: на початку немає жодного одинака. Ось що допоможе: { $steps }.
aim-hidden-single = Мета — цифра { $digit } { CASE($house, "where") }: вона піде в { $cell }, коли зникне з { $rival-cells }.
aim-naked-single = Мета — { $cell }: там стоятиме { $digit }, коли { COUNT($rival-digits) ->
    [1] зникне
   *[other] зникнуть
} { $rival-digits }.

## Eliminations

names = Тут допомагає { $technique }.
    .b = Наступний крок — { $technique }.
    .c = Цього разу потрібне щось інше: { $technique }.
same-holds = Так само { GENDER($mark) ->
    [plural] діють
   *[other] діє
} { $mark }, тому { $gone }.
by-symmetry = За симетрією { $gone }.
by-symmetry-places = За симетрією в { $cell } йде { $digit }.
by-symmetry-opens = За симетрією { $gone }, тож у { $cell } йде { $digit }.
    .b = У відбитті так само: { $gone }, тож у { $cell } йде { $digit }.
follow-end = Тепер { CASE($number, "neuter") } { COUNT($number) ->
    [one] припущення
    [few] припущення
   *[other] припущень
}; і за кожного { CASE($house, "where") } бракує місця для { $digit }.
follow-mark = Тепер { CASE($number, "neuter") } { COUNT($number) ->
    [one] припущення
    [few] припущення
   *[other] припущень
}; про кожне { GENDER($mark) ->
    [plural] вирішують
   *[other] вирішує
} { $mark }.
follow-kind = Тепер { CASE($number, "neuter") } { COUNT($number) ->
    [one] припущення
    [few] припущення
   *[other] припущень
}; усі відпадають з тієї самої причини: { $marks }.
follow-tried-digit = Тепер { CASE($number, "neuter") } { COUNT($number) ->
    [one] припущення
    [few] припущення
   *[other] припущень
}, усі про цифру { $tried-digit }.
follow-tried-cell = Тепер { CASE($number, "neuter") } { COUNT($number) ->
    [one] припущення
    [few] припущення
   *[other] припущень
}, усі про { $tried-cell }.
follow-tried-house = Тепер { CASE($number, "neuter") } { COUNT($number) ->
    [one] припущення
    [few] припущення
   *[other] припущень
}, усі { CASE($tried-house, "where") }.
follow = Тепер { CASE($number, "neuter") } { COUNT($number) ->
    [one] припущення
    [few] припущення
   *[other] припущень
}.
more-alike = Так само { $count ->
    [1] ще одне припущення показує
    [one] ще { $number } припущення показує
    [few] ще { CASE($number, "neuter") } припущення показують
   *[other] ще { $number } припущень показують
}, що { $gone }.
