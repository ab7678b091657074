"""Written forms and what is read in them: one line a form, text | chunks as tests/grammar/shown.py shows them."""

from __future__ import annotations

import pytest

from grammar import Reader

from .shown import shown

FORMS = '''
# whole numbers
7 | <7>
1,250 | <1250>
9,000,000 km | <9000000 km>
1, 250 | <1> , <250>
12,34 | <12> , <34>
0 in | <0 in>
007 in | <7 in>
# decimals
2.5 | <2 1/2>
.5 in | <1/2 in>
0.125 in | <1/8 in>
2,5 cm | <2 1/2 cm>
2,5cm | <2 1/2 cm>
2,25 metres | <2 1/4 m>
2,5 in | <2 1/2 in>
2,5 inches | <2 1/2 in>
fullness 2,5 | fullness <2 1/2>
21,5 stitches | <21 1/2 st>
sizes 4,5 and 6 | sizes [4, 5, 6]
1,250.50 m | <1250 1/2 m>
# fractions
5/8 | <5/8>
5/8" | <5/8 in>
2 1/2 in | <2 1/2 in>
2-1/2 in | <2 1/2 in>
2½ in | <2 1/2 in>
2 ½ in | <2 1/2 in>
½ in | <1/2 in>
1⅛" | <1 1/8 in>
⅝ in | <5/8 in>
2⅓ yd | <2 1/3 yd>
1⁄2 in | <1/2 in>
15 1/2" | <15 1/2 in>
1 15/16 in | <1 15/16 in>
2 63/64 in | <2 63/64 in>
1 and 1/2 in | <1 1/2 in>
5/8 of a yard | <5/8 yd>
3/4 of an inch | <3/4 in>
2/28 yarn | <1/14> yarn
size 80/12 needle | size <6 2/3> needle
20/2 cotton | <10> cotton
5/0 | <5> / <0>
5/8ths of an inch | <5/8 in>
1 1/16th in | <1 1/16 in>
2/3rds of a yard | <2/3 yd>
50/50 cotton | <1> cotton
# words for numbers
two thousand five hundred and ten | <2510>
six foot two | <6 ft + 2 in>
an eighth of an inch | <1/8 in>
a half metre | <1/2 m>
one and a quarter yards | <1 1/4 yd>
2 metres and a half | <2 1/2 m>
one inch | <1 in>
two and a half | <2 1/2>
two and a half inches | <2 1/2 in>
four and a half in | <4 1/2 in>
4 and a half in | <4 1/2 in>
three and three quarters | <3 3/4>
three and three-quarter inches | <3 3/4 in>
fourteen | <14>
twenty-two sts | <22 st>
twenty two sts | <22 st>
seventy-five stitches | <75 st>
sixty | <60>
a hundred and twenty | <120>
two hundred | <200>
a dozen buttons | <12> buttons
two dozen buttons | <24> buttons
2 dozen buttons | <24> buttons
half a dozen buttons | <6> buttons
five and a half sts per inch | <5 1/2 st / 1 in>
ten per cent | <10 %>
Half inch seams | <1/2 in> seams
half a yard | <1/2 yd>
half an inch | <1/2 in>
half-inch seams | <1/2 in> seams
half of a yard | <1/2 yd>
quarter inch | <1/4 in>
quarter-inch seams | <1/4 in> seams
a quarter of a metre | <1/4 m>
a quarter inch | <1/4 in>
three quarters of a yard | <3/4 yd>
three-quarters of a yard | <3/4 yd>
two thirds of a yard | <2/3 yd>
five-eighths inch | <5/8 in>
five eighths seams | <5/8> seams
an eighth thick | <1/8> thick
six point three inches | <6 3/10 in>
one fifty wide | <150> wide
one one fifty gram balls | <1> <1> <50 g> balls
an inch and an eighth wide | <1 1/8 in> wide
a yard and three eighths | <1 3/8 yd>
an inch and a half over four seams | <1 1/2 in> over <4> seams
a yard and a half circle | <1 yd> and a half circle
a yard and a quarter inch | <1 yd> and <1/4 in>
nine pounds fifty a metre | <9 pound + 50 pence / 1 m>
eleven dollars ninety nine | <11 USD + 99 cent>
one metre twenty of lace | <1 m + 20 cm> of lace
12 £ a metre | <12 GBP / 1 m>
2 £5 zips | <2> <5 GBP> zips
2" thru 4" | [2 in to 4 in]
16 in back opening | <16 in> back opening
as a percent | as a percent
five eighths of an inch | <5/8 in>
one half inch | <1/2 in>
half metres | <1/2 m>
an inch | <1 in>
a metre | <1 m>
an inch of hem | <1 in> of hem
a yard and a half | <1 1/2 yd>
a yard and a half of cloth | <1 1/2 yd> of cloth
a yard and three quarters | <1 3/4 yd>
ten-inch squares | <10 in> squares
80 ten-inch squares | <80> <10 in> squares
5-inch squares | <5 in> squares
45-inch-wide cloth | <45 in> wide cloth
ten-inch-wide cloth | <10 in> wide cloth
inch-wide elastic | <1 in> wide elastic
# words that only look like numbers
one-way print | one-way print
two-panel tote | two-panel tote
eight-at-a-time | eight-at-a-time
four-at-a-time geese | four-at-a-time geese
half-square triangles | half-square triangles
half square triangles | half square triangles
half-circle skirt | half-circle skirt
half circle skirt | half circle skirt
quarter circle | quarter circle
three-quarter circle | three-quarter circle
quarter-square triangles | quarter-square triangles
someone often tends | someone often tends
4-ply | <4> ply
half of them | half of them
half of 37 3/4" | half of <37 3/4 in>
a round placemat | a round placemat
sock for a foot 24 cm round | sock for a foot <24 cm> round
2nd row | 2nd row
the 10th row | the 10th row
k2tog, m1 | k2tog , m1
# units
28in | <28 in>
28 in | <28 in>
28IN | <28 in>
14" | <14 in>
14″ | <14 in>
14” | <14 in>
14'' | <14 ft> '
10 MM | <10 mm>
3 M | <3 m>
24L | <24 L>
24 L button | <24 L> button
20 litre | <20 l>
20 % | <20 %>
20% | <20 %>
8 per cent | <8 %>
8 percent | <8 %>
200gsm | <200 g/m^2>
200 g/m² | <200 g/m^2>
6 oz/yd2 | <6 oz/yd^2>
6 ounces to the square yard | <6 oz/yd^2>
4 square inches | <4 in^2>
3 m² | <3 m^2>
45° | <45 degree>
50p | <50 pence>
twenty pounds | <20 pound>
40 tex | <40 tex>
14w 16h 4d | <14> w <16> h <4> d
8 blocks in cm | <8> blocks in cm
5/8 in both sides | <5/8 in> both sides
8 in every round | <8> in every round
12 stitches in one round | <12 st> in <1 round>
4 inset | <4> inset
5 cmx | <5> cmx
# larger and smaller units together
5'3" | <5 ft + 3 in>
5' 3" | <5 ft + 3 in>
5′3″ | <5 ft + 3 in>
5’3” | <5 ft + 3 in>
5'6 | <5 ft + 6 in>
5 ft 3 | <5 ft + 3 in>
I'm 5 ft 2. | i'm <5 ft + 2 in> .
5ft 4½ in | <5 ft + 4 1/2 in>
5ft 4½ in centimetres | <5 ft + 4 1/2 in> centimetres
3 yd 8 in | <3 yd + 8 in>
3 yd 1 ft 8 in | <3 yd + 1 ft + 8 in>
1 m 20 | <1 m + 20 cm>
1m20 | <1 m + 20 cm>
1 m 20 cm | <1 m + 20 cm>
2 lb 4 oz | <2 lb + 4 oz>
5 m 20 squares | <5 m> <20> squares
1 m 5 cm 20 | <1 m + 5 cm> <20>
4 ft 12 panels | <4 ft> <12> panels
# money and rates
£20 | <20 GBP>
£7.25/m | <7 1/4 GBP / 1 m>
£7.25 / m | <7 1/4 GBP / 1 m>
£7.25 a metre | <7 1/4 GBP / 1 m>
£7.25 the metre | <7 1/4 GBP / 1 m>
£7.25 per metre | <7 1/4 GBP / 1 m>
7.25 a metre | <7 1/4 / 1 m>
7.25 per metre | <7 1/4 / 1 m>
$12/yd | <12 USD / 1 yd>
$12.50 a yard | <12 1/2 USD / 1 yd>
€14 a metre | <14 EUR / 1 m>
€2,50 | <2 1/2 EUR>
£1,250.50 | <1250 1/2 GBP>
£ 20 | <20 GBP>
£4.80 a ball | <4 4/5 GBP> a ball
£3 a foot | <3 GBP / 1 ft>
€2.20 each | <2 1/5 EUR> each
£1 in change | <1 GBP> in change
£5 m | <5 GBP> m
€16.99/yd per metre | <16 99/100 EUR / 1 yd> per metre
12 pounds a yard | <12 pound / 1 yd>
2.5 to 1 | <2 1/2 / 1>
2.5:1 | <2 1/2 / 1>
2.5 to one | <2 1/2 / 1>
2 1/2 to 1 | <2 1/2 / 1>
# tension
22 sts and 30 rows to 10 cm | <22 st / 10 cm> and <30 row / 10 cm>
22 sts, 30 rows to 10 cm | <22 st / 10 cm> , <30 row / 10 cm>
22 st & 30 r per 4 in | <22 st / 4 in> & <30 row / 4 in>
22 sts x 30 rows = 10 cm | <22 st / 10 cm> x <30 row / 10 cm>
24 sts and 32 rows = 4 in | <24 st / 4 in> and <32 row / 4 in>
22 sts to 10cm | <22 st / 10 cm>
33 stitches across 15 cm | <33 st / 15 cm>
22 stitches over 10 cm | <22 st / 10 cm>
12 stitches in 4 inches | <12 st / 4 in>
5 sts/in | <5 st / 1 in>
5.5 sts per inch | <5 1/2 st / 1 in>
7 rows per inch | <7 row / 1 in>
8 stitches to the inch | <8 st / 1 in>
18 sts to 4" | <18 st / 4 in>
16.5 to 10 cm | <16 1/2 / 10 cm>
0 stitches to 10 cm | <0 st / 10 cm>
22 sts by 30 rows over 10 cm | <22 st / 10 cm> by <30 row / 10 cm>
28 sts/36 rows = 10cm | <28 st / 10 cm> / <36 row / 10 cm>
22 st/10cm | <22 st / 10 cm>
6 sts to one inch | <6 st / 1 in>
5 sts/in and 7 rows/in | <5 st / 1 in> and <7 row / 1 in>
5 sts to 7 sts | [5 st to 7 st]
12 sts over 48 rows | <12 st> over <48 row>
40 sts and 2 in | <40 st> and <2 in>
# sizes
16"x14" | [16 in x 14 in]
60x72 | [60 x 72]
60 × 72 in | [60 in x 72 in]
60 by 72 | [60 x 72]
60 X 72 | [60 x 72]
60*72 | [60 x 72]
2½ × 4½ | [2 1/2 x 4 1/2]
2½" x 4½" | [2 1/2 in x 4 1/2 in]
30 x 70 x 10 cm | [30 cm x 70 cm x 10 cm]
8 in x 10 in | [8 in x 10 in]
2 inch by 4 inch | [2 in x 4 in]
60in x 72 | [60 in x 72]
2 x 54 | [2 x 54]
about 84 x 99 in | [~84 in x 99 in]
18″ × 21″ fat quarter | [18 in x 21 in] fat quarter
15 cm wide by 18 cm tall | <15 cm> wide by <18 cm> tall
four by six inches | [4 in x 6 in]
# spans
44/45" | [44 in to 45 in]
44/45 | [44 to 45]
44-45 in | [44 in to 45 in]
44–45 in | [44 in to 45 in]
4-5 | [4 to 5]
40 to 50 cm | [40 cm to 50 cm]
from 24 to 40 in | from [24 in to 40 in]
5 to 15 % | [5 % to 15 %]
8 to 10 cm | [8 cm to 10 cm]
from 48 to 72 stitches | from [48 st to 72 st]
one to two yards | [1 yd to 2 yd]
£5-£6 a metre | [5 GBP / 1 m to 6 GBP / 1 m]
5 or 6 a metre | [5 / 1 m or 6 / 1 m]
2 £5 notes | <2> <5 GBP> notes
5 £ | <5 GBP>
half an inch to an inch | [1/2 in to 1 in]
1/2" to 3/4" | [1/2 in to 3/4 in]
£5 to £10 | [5 GBP to 10 GBP]
15 in - 2 in | <15 in> - <2 in>
# sweeps
24 to 40 in by 2 | [24 in to 40 in by 2 in]
60 to 80 cm by 5 | [60 cm to 80 cm by 5 cm]
from 24 to 40 in in steps of 2 | from [24 in to 40 in by 2 in]
24 to 40 inches every 2 inches | [24 in to 40 in by 2 in]
24 to 40 by 2 in | [24 in to 40 in by 2 in]
24 in to 2 m by 10 cm | [24 in to 2 m by 10 cm]
one to three metres by half metres | [1 m to 3 m by 1/2 m]
one to three metres by half a metre | [1 m to 3 m by 1/2 m]
# series
5, 6, 7, 8 and 9 | [5, 6, 7, 8, 9]
5,6,7 | [5, 6, 7]
2, 2 1/2, 3, 3 1/2 and 4 inches | [2 in, 2 1/2 in, 3 in, 3 1/2 in, 4 in]
1 1/2, 2 1/2 and 3 1/2 in | [1 1/2 in, 2 1/2 in, 3 1/2 in]
2, 3, and 4 in | [2 in, 3 in, 4 in]
44 in or 60 in | [44 in or 60 in]
44 or 60 in | [44 in or 60 in]
44, 54 or 60 in | [44 in or 54 in or 60 in]
2 and 3 in | <2> and <3 in>
2 in and 3 in | <2 in> and <3 in>
14 in wide, 15 in high, 4 in deep | <14 in> wide , <15 in> high , <4 in> deep
28 in, 1 in | <28 in> , <1 in>
28 in, 1 in, 92% | <28 in> , <1 in> , <92 %>
in 112 cm cloth or in 150 cm cloth | in <112 cm> cloth or in <150 cm> cloth
# signs and about
-28 in | <-28 in>
−3/4 in | <-3/4 in>
+2 in | <+2 in>
minus 3/4 in | <-3/4 in>
plus 2 edge stitches | <+2> edge stitches
a waist of -28 in | a waist of <-28 in>
28 in, -2 in | <28 in> , <-2 in>
and plus 2 in | and <+2 in>
3 in + 2 in | <3 in> + <2 in>
3 in plus 2 in | <3 in> plus <2 in>
about 30 in | <~30 in>
roughly 30 in | <~30 in>
approx. 30 in | <~30 in>
~30 in | <~30 in>
around 30 in | <~30 in>
at least 30 in | at least <30 in>
about the hem | about the hem
# everything else
scale 1:4 | scale <1> : <4>
40in-42in | [40 in to 42 in]
12"x12"x2" | [12 in x 12 in x 2 in]
why? | why ?
Toddler's jacket | toddler's jacket
Toddler’s jacket | toddler's jacket
double-fold bias | double-fold bias
w/ 12 seams | w / <12> seams
a = b | a = b
one\\ttwo | <1> <2>
3 in\\n4 in | <3 in> \\n <4 in>
🧵 3 in | 🧵 <3 in>
３ in | <3 in>
3\u00a0in | <3 in>
sti\u200btch | stitch
'''  # fmt: skip

CASES = [line for line in FORMS.strip().splitlines() if not line.startswith("#")]


@pytest.mark.parametrize("case", CASES)
def test_a_written_form_is_read_as_it_is_meant(reader: Reader, case: str) -> None:
    text, _, expected = case.partition(" | ")
    typed = text.replace("\\t", "\t").replace("\\n", "\n")
    assert shown(reader.read(typed)) == expected


def test_there_are_enough_forms() -> None:
    assert len(CASES) >= 200
