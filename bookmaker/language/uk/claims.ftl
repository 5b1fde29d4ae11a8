### Why a step holds: a sentence for each claim. A kind of rule or a technique may have a wording of its own, after “--”.
### $gone is what goes, as a clause; $mark is the mark that says so, always the subject: its gender “plural” asks for a verb
### in the plural. A cell stands behind “клітинка”, in its case, for in editions in text it is called “рядок 3 стовпець 5”.

## What goes

gone-first = з { COUNT($cells) ->
    [1] клітинки
   *[other] клітинок
} { $cells } { COUNT($digits) ->
    [1] зникає
   *[other] зникають
} { $digits }
gone-next = з { COUNT($cells) ->
    [1] клітинки
   *[other] клітинок
} { $cells } { COUNT($digits) ->
    [1] зникає
   *[other] зникають
} { $digits }
impossible = з цифрою { OR($digits) } у клітинці { OR($cells) }

## Singles

claim-last-cell = Остання вільна клітинка { CASE($house, "genitive") } — { $cell }; туди йде { $digit }.
claim-hidden-single = { CASE($house, "where") } цифра { $digit } можлива тільки в клітинці { $cell }.
claim-naked-single = У клітинці { $cell } можлива вже тільки цифра { $digit }.
claim-fixed = { $mark } не { GENDER($mark) ->
    [plural] лишають
   *[other] лишає
} вибору в клітинці { $cell }: незалежно від заданих цифр там стоїть { $digit }.
claim-from-proof = Тут драбина прийомів закінчується; цифру { $digit } у клітинці { $cell } взято з доведення.

## Patterns

claim-locked = { CASE($home, "where") } всі місця для { $digit } лежать { CASE($other, "where") }, тому { $gone }.
claim-naked-subset = { CASE($house, "where") } клітинки { $cells } ділять між собою цифри { $digits }, тому { $gone }.
claim-naked-subset-in-mark = { $mark } не { GENDER($mark) ->
    [plural] повторюють
   *[other] повторює
} цифр, а { COUNT($cells) ->
    [1] клітинка { $cells } займає там
   *[other] клітинки { $cells } займають там
} { $digits }, тому { $gone }.
claim-naked-subset--limits = { CASE($house, "where") } клітинки { $cells } обмежено цифрами { $digits }, тому { $gone }.
claim-naked-subset--parity = { CASE($house, "where") } клітинки { $cells } забирають цифри { $digits }, тому { $gone }.
claim-hidden-subset = { CASE($house, "where") } цифри { $digits } вміщаються тільки в клітинках { $cells }, тому { $gone }.
claim-fish = { CASE($base, "where") } всі місця для { $digit } лежать { CASE($cover, "where") }, тому { $gone }.
claim-fish-finned = { CASE($base, "where") } кожне місце для { $digit } лежить { CASE($cover, "where") } або є клітинкою { OR($fins) }; у кожному з цих випадків { $gone }.
claim-seen-by-all = { CASE($house, "where") } цифра { $digit } стоїть у клітинці { OR($places) }; кожна з них бачить { COUNT($gone-cells) ->
    [1] клітинку
   *[other] клітинки
} { $gone-cells }, тому { $gone }.
claim-seen-by-all-in-mark = { $mark } { GENDER($mark) ->
    [plural] мають
   *[other] має
} цифру { $digit } у клітинці { OR($places) }; кожна з них бачить { COUNT($gone-cells) ->
    [1] клітинку
   *[other] клітинки
} { $gone-cells }, тому { $gone }.
claim-seen-by-all--king = { CASE($house, "where") } цифра { $digit } стоїть у клітинці { OR($places) }; кожна з них { COUNT($gone-cells) ->
    [1] дотикається до клітинки { $gone-cells } або лежить із нею
   *[other] дотикається до клітинок { $gone-cells } або лежить із ними
} в одному { house-any }, тому { $gone }.
claim-seen-by-all--knight = { CASE($house, "where") } цифра { $digit } стоїть у клітинці { OR($places) }; кожна з них бачить { COUNT($gone-cells) ->
    [1] клітинку
   *[other] клітинки
} { $gone-cells } в { house-any } або ходом коня, тому { $gone }.
claim-pivot-wing--xy-wing = Хай що стоїть у клітинці { $pivot }, цифра { $digit } йде в клітинку { OR($wings) }, тому { $gone }.
claim-pivot-wing--xyz-wing = Хай що стоїть у клітинці { $pivot }, цифра { $digit } йде туди або в клітинку { OR($wings) }, тому { $gone }.
claim-linked-wing = { CASE($house, "where") } цифра { $joined } стоїть у клітинці { OR($link) }, тому клітинки { $pair } не можуть обидві містити { $joined }; в одній із них стоїть { $digit }, тож { $gone }.
claim-chain = Якщо в клітинці { $start-cell } не стоїть { $start-digit }, то { $trues }. Отже, { $start } або { $end }, а в обох випадках { $gone }.
claim-chain-to-itself = Якщо в клітинці { $start-cell } не стоїть { $start-digit }, то { $trues }, усупереч сказаному. Отже, { $start }, тому { $gone }.
claim-extended-chain = Якщо { $unless }, то { $trues }. Отже, { $start } або { $end }, а в обох випадках { $by } виключає { $taken }.
claim-extended-chain-seen = Якщо { $unless }, то { $trues }. Отже, { $start } або { $end }, а в обох випадках { $gone }.
claim-extended-chain-to-itself = Якщо { $unless }, то { $trues }, усупереч сказаному. Отже, { $start }, а { $by } виключає { $taken }.
claim-extended-chain-to-itself-seen = Якщо { $unless }, то { $trues }, усупереч сказаному. Отже, { $start }, тому { $gone }.
claim-either-way = { CASE($house, "where") } цифра { $digit } стоїть у клітинці { OR($places) }; { $n ->
    [2] в обох випадках
   *[other] у кожному випадку
} { $by } виключає { $taken }.
claim-either-way-in-cell = У клітинці { $cell } стоїть { OR($digits) }; { COUNT($digits) ->
    [2] в обох випадках
   *[other] у кожному випадку
} { $by } виключає { $taken }.
in-plain-sight = сама цифра
true-in-group = цифра { $digit } стоїть у клітинці { OR($cells) }
unless = у клітинці { $cell } не стоїть { $digit }
unless-in-group = цифра { $digit } не стоїть у жодній із клітинок { $cells }
true-by-mark = { $by } виключає { $taken }, тому { $true }
true-among = клітинки { $among } містять { $digits }, тому { $true }
true-among-by-mark = { $by } виключає { $taken }, клітинки { $among } містять { $digits }, тому { $true }
true = у клітинці { $cell } стоїть { $digit }

## What-ifs

claim-refuted = Якщо поставити { $tried }, то { $end }, тому { $gone }.
claim-refuted-later = Якщо поставити { $tried }, то за { $n ->
    [1] одне коло
    [few] { CASE($rounds, "neuter") } кола
   *[other] { CASE($rounds, "neuter") } кіл
} вимушених записів { $end }, тому { $gone }.
claim-refuted-linked = Припустімо { $tried }: тоді { $links }, а врешті { $end }. Отже, { $gone }.
end-no-place = { CASE($house, "where") } не лишається місця для { $digit }
end-no-digit = для клітинки { $cell } не лишається жодної цифри
end-no-digit-by-mark = { $mark } не { GENDER($mark) ->
    [plural] лишають
   *[other] лишає
} жодної цифри для клітинки { $cell }
end-no-digit-by-marks = позначки не лишають жодної цифри для клітинки { $cell }
end-nothing-fits = { $mark } вже не { GENDER($mark) ->
    [plural] можуть бути доповнені
    [feminine] може бути доповнена
    [neuter] може бути доповнене
   *[other] може бути доповнений
}
then-in-house = { CASE($house, "where") } цифра { $digit } йде в клітинку { $cell }
then-last = у клітинці { $cell } може стояти тільки { $digit }
then-by-mark = { $mark } { GENDER($mark) ->
    [plural] лишають
   *[other] лишає
} в клітинці { $cell } тільки { $digit }
then-gone = { $mark } { GENDER($mark) ->
    [plural] виключають
   *[other] виключає
} { $taken }
taken = { $digits } у { COUNT($cells) ->
    [1] клітинці
   *[other] клітинках
} { $cells }

## What a mark allows

bounds-least = в клітинці { $cell } щонайменше { $low }
bounds-most = в клітинці { $cell } щонайбільше { $high }
bounds-both = в клітинці { $cell } від { $low } до { $high }
bounds-only = в клітинці { $cell } тільки { $low }
claim-bounds = { $mark } { GENDER($mark) ->
    [plural] допускають
   *[other] допускає
} { $bounds }, тому { $gone }.
claim-bounds--thermometer = { $mark } { GENDER($mark) ->
    [plural] мусять
   *[other] мусить
} зростати з клітинки в клітинку, тому { $gone }.
claim-bounds--resting-thermometer = { $mark } не { GENDER($mark) ->
    [plural] можуть
   *[other] може
} спадати, тому { $gone }.
claim-bounds--diagonal-sum = { $mark } { GENDER($mark) ->
    [plural] допускають
   *[other] допускає
} { $bounds }, хай що стоїть в інших клітинках, тому { $gone }.
claim-enclosed = { $mark } { GENDER($mark) ->
    [plural] мають
   *[other] має
} всі цифри між цифрами на обох кінцях, тому { $gone }.
claim-enclosed-ends = { $mark } { GENDER($mark) ->
    [plural] потребують
   *[other] потребує
} місця для своїх цифр між цифрами на обох кінцях, тому { $gone }.
claim-only-digits = { $mark } { GENDER($mark) ->
    [plural] допускають
   *[other] допускає
} тільки { $digits }, тому { $gone }.
claim-only-digits--parity-run = { $mark } { GENDER($mark) ->
    [plural] вимагають
   *[other] вимагає
} в { COUNT($cells) ->
    [1] клітинці
   *[other] клітинках
} { $cells } { COUNT($digits) ->
    [1] цифри
   *[other] цифр
} { $digits }, тому { $gone }.
claim-only-digits--parity-line = { $mark } { GENDER($mark) ->
    [plural] мають
   *[other] має
} в { COUNT($cells) ->
    [1] клітинці
   *[other] клітинках
} { $cells } цифру { OR($digits) }, тому { $gone }.
claim-only-digits--low-high-line = { $mark } { GENDER($mark) ->
    [plural] мають
   *[other] має
} в { COUNT($cells) ->
    [1] клітинці
   *[other] клітинках
} { $cells } цифру { OR($digits) }, тому { $gone }.
claim-only-in = { $mark } { GENDER($mark) ->
    [plural] допускають
   *[other] допускає
} { $digits } тільки в { COUNT($digits) ->
    [1] клітинці { OR($cells) }
   *[other] клітинках { $cells }
}, тому { $gone }.
claim-only-in--counting-area = { $mark } { GENDER($mark) ->
    [plural] мають
   *[other] має
} { $digits } у { COUNT($cells) ->
    [1] клітинці
   *[other] клітинках
} { $cells }, тому { $gone }.
claim-only-in--quadruple = { $mark } { GENDER($mark) ->
    [plural] вимагають
   *[other] вимагає
} { COUNT($digits) ->
    [1] цифри { $digits }, а вона вміщається
   *[other] цифр { $digits }, а вони вміщаються
} тільки в { COUNT($cells) ->
    [1] клітинці
   *[other] клітинках
} { $cells }, тому { $gone }.
claim-no-partner = { $mark } { GENDER($mark) ->
    [plural] виключають
   *[other] виключає
} { $gone-digits } у клітинці { $cell }, бо для { COUNT($beyond) ->
    [1] клітинки
   *[other] клітинок
} { $beyond } нічого б не лишилося.
claim-beside = { $mark } разом із цифрою { $known } у клітинці { $beside } { GENDER($mark) ->
    [plural] виключають
   *[other] виключає
} { $gone-digits } у клітинці { $cell }.
claim-beside--non-consecutive = Цифра { $known } у клітинці { $beside } не допускає поруч цифри, на один меншої чи більшої, тому { $gone }.
    .b = Поруч із цифрою { $known } у клітинці { $beside } не стоїть цифра, на один менша чи більша, тому { $gone }.
claim-beside--no-doubles = Поруч із цифрою { $known } у клітинці { $beside } не стоїть ні її половина, ні її подвоєння, тому { $gone }.
claim-beside--barred-sums = Поруч із цифрою { $known } у клітинці { $beside } { COUNT($gone-digits) ->
    [1] цифра { $gone-digits } у клітинці { $cell } дала б
   *[other] цифри { $gone-digits } у клітинці { $cell } дали б
} заборонену суму.
claim-too-near = { $mark } { GENDER($mark) ->
    [plural] виключають
   *[other] виключає
} { $gone-digits } у клітинці { $cell }: різниця з { COUNT($beside) ->
    [1] клітинкою
   *[other] клітинками
} { $beside } завжди була б замала.
claim-one-combination = { $mark } { GENDER($mark) ->
    [plural] можуть
   *[other] може
} містити тільки { $digits }, тому { $gone }.
claim-one-combination--quadruple = { $mark } { GENDER($mark) ->
    [plural] заповнюють
   *[other] заповнює
} свої чотири клітинки, тому { $gone }.
claim-no-combination = { $mark } не { GENDER($mark) ->
    [plural] мають
   *[other] має
} жодної комбінації з цифрою { OR($gone-digits) }, тому { $gone }.
claim-no-run = { $mark } не { GENDER($mark) ->
    [plural] мають
   *[other] має
} жодного ряду з цифрою { OR($gone-digits) }, тому { $gone }.
claim-needed = { $mark } { GENDER($mark) ->
    [plural] вимагають
   *[other] вимагає
} цифри { $digit } у клітинці { OR($places) }, тому { $gone }.
claim-no-filling = { $mark } не { GENDER($mark) ->
    [plural] заповнюються
   *[other] заповнюється
} { $impossible }.
    .b = { $mark } не { GENDER($mark) ->
        [plural] мають
       *[other] має
    } заповнення { $impossible }.
claim-no-filling-joined = { $mark } не узгоджуються { $impossible }.
claim-same-digit = { $mark } { GENDER($mark) ->
    [plural] мають
   *[other] має
} ту саму цифру в клітинках { $cells }, тому { $gone }.
claim-reached = { $mark } не { GENDER($mark) ->
    [plural] дають
   *[other] дає
} повторити цифру { $digit } з клітинки { $cell } у { COUNT($gone-cells) ->
    [1] клітинці
   *[other] клітинках
} { $gone-cells }, тому { $gone }.
claim-reached--king = Від цифри { $digit } у клітинці { $cell } хід короля веде до { COUNT($gone-cells) ->
    [1] клітинки
   *[other] клітинок
} { $gone-cells }, тому { $digit } не може там стояти.
claim-reached--knight = Від цифри { $digit } у клітинці { $cell } хід коня веде до { COUNT($gone-cells) ->
    [1] клітинки
   *[other] клітинок
} { $gone-cells }, тому { $digit } не може там стояти.
claim-beside-all = { CASE($house, "where") } цифра { $digit } стоїть у клітинці { OR($places) }, завжди поруч із клітинкою { $cell }, тому { $gone }.
claim-limits-meet = { $mark } { GENDER($mark) ->
    [plural] дають
   *[other] дає
} разом щонайменше { $least }, а підсумок — щонайбільше { $most }, тому { $gone }.
claim-limits-meet-from-above = { $mark } { GENDER($mark) ->
    [plural] дають
   *[other] дає
} разом щонайбільше { $most }, а підсумок — щонайменше { $least }, тому { $gone }.
claim-limits-meet--arrow = { $mark } { GENDER($mark) ->
    [plural] мають
   *[other] має
} вздовж держака щонайменше { $least }, а в кружку щонайбільше { $most }, тому { $gone }.
claim-limits-meet-from-above--arrow = { $mark } { GENDER($mark) ->
    [plural] мають
   *[other] має
} вздовж держака щонайбільше { $most }, а в кружку щонайменше { $least }, тому { $gone }.
claim-common-sum--square-block = { $mark } { GENDER($mark) ->
    [plural] мусять
   *[other] мусить
} мати в кожному ряді суму { $sums }, тому { $gone }.
claim-common-sum--open-cage = { $mark } { GENDER($mark) ->
    [plural] мусять
   *[other] мусить
} мати в кожній рамці суму { $sums }, тому { $gone }.
claim-common-sum = { $mark } { GENDER($mark) ->
    [plural] мусять
   *[other] мусить
} мати в кожній частині суму { $sums }, тому { $gone }.
sums-range = від { $least } до { $most }
claim-left-over = { $houses } { $n ->
    [1] дає
   *[other] дають
} разом { $total }, а { $nouns }, що вміщаються там цілком, дають { $within }, тож на { COUNT($cells) ->
    [1] клітинку { $cells } лишається
   *[other] клітинки { $cells } лишається разом
} { $rest }, і { $gone }.
claim-left-over-beyond = { $houses } { $n ->
    [1] дає
   *[other] дають
} разом { $total }, а { $nouns }, що все це покривають, дають { $within }, тож на { COUNT($cells) ->
    [1] клітинку { $cells } лишається
   *[other] клітинки { $cells } лишається разом
} { $rest }, і { $gone }.
claim-steps = { $mark } { GENDER($mark) ->
    [plural] допускають
   *[other] допускає
} тільки кроки на { OR($steps) }, тому { $gone }.
claim-first-digits = { $mark } { COUNT($digits) ->
    [1] мусить починатися з цифри { $digits }
   *[other] може починатися тільки з цифри { OR($digits) }
}, а продовження має з нею узгоджуватися, тому { $gone }.
claim-counts-to = { $mark } може бути тільки на місці { OR($places) }, яке відлічує клітинка { $first }, тому { $gone }.
claim-counts-to--pointing = { $mark } може вести тільки до місця { OR($places) }, тому { $gone }.
claim-apart = { $mark } { GENDER($mark) ->
    [plural] означають
   *[other] означає
}, що між скоринками { $counts }, тому { $gone }.
claim-apart-filled = { $mark } { GENDER($mark) ->
    [plural] означають
   *[other] означає
}, що між скоринками { $counts }, і там стоять { $fillings }, тому { $gone }.
apart-cells = { $number } { $n ->
    [1] клітинка
    [few] клітинки
   *[other] клітинок
}
claim-held-by-rest = { CASE($rest, "where") } кожна цифра теж стоїть один раз, а { $digit } можлива там тільки в клітинці { $cell }, тому { $gone }.
claim-held-by-rest-settled = { CASE($rest, "where") } кожна цифра теж стоїть один раз, а { $digit } вже стоїть там у клітинці { $cell }, тому { $gone }.
