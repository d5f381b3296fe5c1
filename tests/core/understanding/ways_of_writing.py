"""Ways people write readings, in six languages. Every line is invented: there is no message from a real person.

A line is `measure unit: text → meaning`, with the client's preferred unit. The meaning is a
value with its unit ("172 lb"), a blood pressure, a mean with the number of attempts ("94.25 cm x2"), a pulse with its
window ("72 bpm @15"), or "ask": asked back, followed by the guess, if any.
"""

ENGLISH = """
weight kg: 82.4 → 82.4 kg
weight kg: 82.4kg → 82.4 kg
weight kg: 82.4 KG → 82.4 kg
weight kg: 82.4 kgs → 82.4 kg
weight kg: 82,4 → 82.4 kg
weight kg: 82.40 → 82.4 kg
weight kg: 82 → 82 kg
weight kg: 82.4. → 82.4 kg
weight kg:   82.4   → 82.4 kg
weight kg: its 82.4 → 82.4 kg
weight kg: It's 82.4 today → 82.4 kg
weight kg: I weigh 82.4 kilos → 82.4 kg
weight kg: weight 82.4 → 82.4 kg
weight kg: Weight: 82.4 kg :) → 82.4 kg
weight kg: scales said 82.4 this morning → 82.4 kg
weight kg: 82.4 at 7:30 → 82.4 kg
weight kg: 82.4 at 7am → 82.4 kg
weight kg: 82 point 4 → 82.4 kg
weight kg: eighty two point four → 82.4 kg
weight kg: eighty-two and a half → 82.5 kg
weight kg: eighty two → 82 kg
weight kg: about 82 → 82 kg
weight kg: 82ish → 82 kg
weight kg: 82 kilos 400 → 82.4 kg
weight kg: 82 kg 400 g → 82.4 kg
weight kg: 82½ → 82.5 kg
weight kg: 82 1/2 kg → 82.5 kg
weight kg: 181.7 lbs → 181.7 lb
weight kg: 82.4 kg (181.7 lb) → 82.4 kg
weight kg: hi, it was 82.4 → 82.4 kg
weight kg: ８２.４ → 82.4 kg
weight kg: 82.4 👍 → 82.4 kg
weight lb: 181 → 181 lb
weight lb: 181.5 → 181.5 lb
weight lb: 181 lb 8 oz → 181.5 lb
weight lb: one hundred and eighty one → 181 lb
weight lb: one eighty one → 181 lb
weight lb: a hundred and eighty pounds → 180 lb
weight lb: 82.4 kg → 82.4 kg
weight st: 12 st 4 → 172 lb
weight st: 12st 4lb → 172 lb
weight st: 12st4 → 172 lb
weight st: 12 stone 4 → 172 lb
weight st: 12 stone 4 pounds → 172 lb
weight st: 12 stone and 4 pounds → 172 lb
weight st: twelve stone four → 172 lb
weight st: twelve and a half stone → 175 lb
weight st: 12 4 → 172 lb
weight st: 12 stone → 168 lb
weight st: 12 → 168 lb
weight st: 12.4 → ask 172 lb
weight st: 12.10 → ask 178 lb
weight kg: 82 4 → ask 82.4 kg
weight kg: 82. 4 → ask 82.4 kg
weight kg: 82 to 84 → ask
weight kg: 82-84 → ask
weight kg: 82 or 83 → ask
weight kg: between 82 and 83 → ask
weight kg: over 82 → ask
weight kg: I lost 2 kg → ask
weight kg: down 2 → ask
weight kg: 824 → ask 82.4 kg
weight kg: 94 cm → ask
weight kg: the same → ask
weight kg: no idea → ask
weight kg: -82.4 → ask 82.4 kg
weight kg: is 82 too much? → ask 82 kg
waist cm: 94 → 94 cm
waist cm: 94.5 cm → 94.5 cm
waist cm: 94 and 94.5 → 94.25 cm x2
waist cm: 94, 95 → 94.5 cm x2
waist cm: 94 / 95 cm → 94.5 cm x2
waist cm: 945 mm → 94.5 cm
waist cm: 0.94 m → 94 cm
waist cm: 37 inches → 37 in
waist in: 37 → 37 in
waist in: 37 1/2 → 37.5 in
waist in: 37½" → 37.5 in
waist in: 37 and a half → 37.5 in
waist in: 37.5" → 37.5 in
waist in: thirty seven and a quarter inches → 37.25 in
waist in: 37 in → 37 in
waist cm: 94 and 104 → ask
waist cm: 37 → ask
height cm: 165 → 165 cm
height cm: 1.65 → 165 cm
height cm: 1m65 → 165 cm
height cm: 1.65 m → 165 cm
height cm: 5'7" → 67 in
height cm: 5ft 7 → 67 in
height cm: five foot seven → 67 in
height cm: five feet seven and a half inches → 67.5 in
height ft: 5 7 → 67 in
height ft: 5.7 → ask 67 in
height ft: 5' 7 1/2 → 67.5 in
resting_heart_rate bpm: 72 → 72 bpm
resting_heart_rate bpm: 72 bpm → 72 bpm
resting_heart_rate bpm: 72 beats a minute → 72 bpm
resting_heart_rate bpm: 72/min → 72 bpm
resting_heart_rate bpm: pulse 72 → 72 bpm
resting_heart_rate bpm: 18 in 15 s → 72 bpm @15
resting_heart_rate bpm: 18 in 15 → 72 bpm @15
resting_heart_rate bpm: 36 in 30 → 72 bpm @30
resting_heart_rate bpm: 36 in half a minute → 72 bpm @30
resting_heart_rate bpm: counted 36 beats in 30 secs → 72 bpm @30
resting_heart_rate bpm: 18 x 4 → 72 bpm @15
resting_heart_rate bpm: 36x2 → 72 bpm @30
resting_heart_rate bpm: 18 and 17 in 15s → 70 bpm x2 @15
resting_heart_rate bpm: 70, 72 → 71 bpm x2
resting_heart_rate bpm: seventy two → 72 bpm
resting_heart_rate bpm: 18 → ask 72 bpm
resting_heart_rate bpm: 70,72 → ask 71 bpm
resting_heart_rate bpm: 70-75 → ask
blood_pressure mmHg: 128/82 → 128/82
blood_pressure mmHg: 128 / 82 → 128/82
blood_pressure mmHg: 128 over 82 → 128/82
blood_pressure mmHg: 128 on 82 → 128/82
blood_pressure mmHg: 128 82 → 128/82
blood_pressure mmHg: 128-82 → 128/82
blood_pressure mmHg: 128, 82 → 128/82
blood_pressure mmHg: BP 128/82 mmHg → 128/82
blood_pressure mmHg: 128/82 pulse 70 → 128/82
blood_pressure mmHg: 128/82/70 → 128/82
blood_pressure mmHg: one twenty eight over eighty two → 128/82
blood_pressure mmHg: one hundred and twenty eight over eighty two → 128/82
blood_pressure mmHg: 128 → ask
blood_pressure mmHg: 128,82 → ask 128 mmHg
blood_pressure mmHg: 82/128 → ask
blood_pressure mmHg: 17 kPa → ask
energy points: 7 → 7 points
energy points: seven → 7 points
energy points: 7/10 → 7 points
energy points: 7 out of 10 → 7 points
energy points: a 7 → 7 points
energy points: I'd say 7 → 7 points
energy points: tired today, 4 → 4 points
energy points: 7️⃣ → 7 points
energy points: 7.5 → ask 8 points
energy points: 7 or 8 → ask
energy points: 70 → ask 7 points
chair_stand_30s reps: 12 → 12 reps
chair_stand_30s reps: twelve → 12 reps
chair_stand_30s reps: 12 times → 12 reps
chair_stand_30s reps: I did 12 stands → 12 reps
chair_stand_30s reps: 12 and a half → ask
five_chair_stands s: 14.5 → 14.5 s
five_chair_stands s: 14,5 sec → 14.5 s
five_chair_stands s: 14.5 seconds → 14.5 s
five_chair_stands s: 4 rises then stopped → ask
five_chair_stands s: couldn't do it → ask
walk_mile min: 14:30, 140 → 14.5 min /140
walk_mile min: 14 min 30, pulse 140 → 14.5 min /140
activity_minutes min: 150 → 150 min
activity_minutes min: 2 hours → 120 min
activity_minutes min: 2h → 120 min
activity_minutes min: 1h30 → 90 min
activity_minutes min: two and a half hours → 150 min
activity_minutes min: an hour and a half → 90 min
activity_minutes min: half an hour → 30 min
activity_minutes min: 5 x 30 → 150 min
activity_minutes min: 5 times 30 minutes → 150 min
activity_minutes min: none → 0 min
activity_minutes min: nothing this week → 0 min
activity_minutes min: 30 min a day → ask 210 min
"""

SPANISH = """
weight kg: 82,4 → 82.4 kg
weight kg: 82.4 → 82.4 kg
weight kg: 82,4 kg → 82.4 kg
weight kg: 82,4 kilos → 82.4 kg
weight kg: peso 82,4 → 82.4 kg
weight kg: Hoy peso 82,4 kg → 82.4 kg
weight kg: mi peso es 82,4 → 82.4 kg
weight kg: ochenta y dos coma cuatro → 82.4 kg
weight kg: ochenta y dos con cuatro → 82.4 kg
weight kg: ochenta y dos kilos y medio → 82.5 kg
weight kg: ochenta y dos y medio → 82.5 kg
weight kg: unos 82 → 82 kg
weight kg: 82 kilos 400 → 82.4 kg
weight kg: 82 kilos y 400 gramos → 82.4 kg
weight kg: 82,4 a las 7 de la mañana → 82.4 kg
weight kg: 181 libras → 181 lb
weight lb: 181 → 181 lb
weight kg: ciento dos → 102 kg
weight kg: entre 82 y 84 → ask
weight kg: 82 a 84 → ask
weight kg: 82 u 83 → ask
weight kg: he bajado 2 kilos → ask
weight kg: más de 82 → ask
weight kg: 824 → ask 82.4 kg
weight kg: ni idea → ask
waist cm: 94 → 94 cm
waist cm: 94 cm → 94 cm
waist cm: noventa y cuatro centímetros → 94 cm
waist cm: cintura 94 → 94 cm
waist cm: 94 y 94,5 → 94.25 cm x2
waist cm: 37 pulgadas → 37 in
waist cm: 37 pulgadas y media → 37.5 in
waist in: 37 y media → 37.5 in
height cm: 1,65 → 165 cm
height cm: 1 m 65 → 165 cm
height cm: uno sesenta y cinco → ask
height cm: un metro sesenta y cinco → 165 cm
height cm: 165 cm → 165 cm
resting_heart_rate bpm: 72 → 72 bpm
resting_heart_rate bpm: 72 lpm → 72 bpm
resting_heart_rate bpm: 72 pulsaciones por minuto → 72 bpm
resting_heart_rate bpm: pulso 72 → 72 bpm
resting_heart_rate bpm: 18 en 15 s → 72 bpm @15
resting_heart_rate bpm: 18 latidos en 15 segundos → 72 bpm @15
resting_heart_rate bpm: 36 en medio minuto → 72 bpm @30
resting_heart_rate bpm: 36 por 2 → 72 bpm @30
resting_heart_rate bpm: setenta y dos → 72 bpm
blood_pressure mmHg: 128/82 → 128/82
blood_pressure mmHg: 128 sobre 82 → 128/82
blood_pressure mmHg: 128 con 82 → 128/82
blood_pressure mmHg: tensión 128/82 → 128/82
blood_pressure mmHg: ciento veintiocho sobre ochenta y dos → 128/82
blood_pressure mmHg: 128/82 pulso 70 → 128/82
blood_pressure mmHg: 12/8 → ask 120 mmHg
blood_pressure mmHg: 128 → ask
energy points: 7 → 7 points
energy points: siete → 7 points
energy points: un 7 → 7 points
energy points: 7 de 10 → 7 points
energy points: 7 sobre 10 → 7 points
energy points: yo diría que 7 → 7 points
energy points: 7 u 8 → ask
energy points: siete y medio → ask 8 points
chair_stand_30s reps: doce → 12 reps
chair_stand_30s reps: 12 veces → 12 reps
activity_minutes min: 150 → 150 min
activity_minutes min: 2 horas → 120 min
activity_minutes min: dos horas y media → 150 min
activity_minutes min: media hora → 30 min
activity_minutes min: una hora y cuarto → 75 min
activity_minutes min: nada → 0 min
activity_minutes min: 30 min al día → ask 210 min
five_chair_stands s: 14,5 segundos → 14.5 s
"""

GERMAN = """
weight kg: 82,4 → 82.4 kg
weight kg: 82.4 → 82.4 kg
weight kg: 82,4 kg → 82.4 kg
weight kg: 82,4 Kilo → 82.4 kg
weight kg: Gewicht 82,4 → 82.4 kg
weight kg: Ich wiege 82,4 kg → 82.4 kg
weight kg: Heute sind es 82,4 → 82.4 kg
weight kg: zweiundachtzig Komma vier → 82.4 kg
weight kg: zweiundachtzigeinhalb → 82.5 kg
weight kg: zweiundachtzig ein halb → 82.5 kg
weight kg: zwei und achtzig → 82 kg
weight kg: ca. 82 → 82 kg
weight kg: ungefähr 82,5 kg → 82.5 kg
weight kg: 82 Kilo 400 → 82.4 kg
weight kg: 82,4 kg um 7 Uhr → 82.4 kg
weight kg: 82,4 heute früh → 82.4 kg
weight kg: hundertzwei → 102 kg
weight kg: 164 Pfund → ask 82 kg
weight kg: 181 lb → 181 lb
weight kg: 82 bis 84 → ask
weight kg: 82 oder 83 → ask
weight kg: zwischen 82 und 83 → ask
weight kg: 2 kg abgenommen → ask
weight kg: über 82 → ask
weight kg: 824 → ask 82.4 kg
weight kg: keine Ahnung → ask
waist cm: 94 → 94 cm
waist cm: 94 cm → 94 cm
waist cm: Taille 94 → 94 cm
waist cm: Bauchumfang 94,5 cm → 94.5 cm
waist cm: vierundneunzig → 94 cm
waist cm: 94 und 94,5 → 94.25 cm x2
waist cm: 37 Zoll → 37 in
height cm: 1,65 → 165 cm
height cm: 1 m 65 → 165 cm
height cm: 1,65 m → 165 cm
height cm: ein Meter fünfundsechzig → 165 cm
height cm: 165 cm groß → 165 cm
resting_heart_rate bpm: 72 → 72 bpm
resting_heart_rate bpm: Puls 72 → 72 bpm
resting_heart_rate bpm: 72 Schläge pro Minute → 72 bpm
resting_heart_rate bpm: 18 in 15 Sek → 72 bpm @15
resting_heart_rate bpm: 18 Schläge in 15 Sekunden → 72 bpm @15
resting_heart_rate bpm: 36 in 30 → 72 bpm @30
resting_heart_rate bpm: 36 in einer halben Minute → 72 bpm @30
resting_heart_rate bpm: 18 mal 4 → 72 bpm @15
resting_heart_rate bpm: zweiundsiebzig → 72 bpm
blood_pressure mmHg: 128/82 → 128/82
blood_pressure mmHg: 128 zu 82 → 128/82
blood_pressure mmHg: Blutdruck 128 zu 82 → 128/82
blood_pressure mmHg: hundertachtundzwanzig zu zweiundachtzig → 128/82
blood_pressure mmHg: 128/82 Puls 70 → 128/82
blood_pressure mmHg: RR 128/82 → 128/82
blood_pressure mmHg: 128 → ask
energy points: 7 → 7 points
energy points: sieben → 7 points
energy points: eine 7 → 7 points
energy points: 7 von 10 → 7 points
energy points: heute eher 4 → 4 points
energy points: 7 bis 8 → ask
energy points: siebeneinhalb → ask 8 points
chair_stand_30s reps: zwölf → 12 reps
chair_stand_30s reps: zwoelf → 12 reps
chair_stand_30s reps: 12 mal → 12 reps
activity_minutes min: 150 Minuten → 150 min
activity_minutes min: 2 Stunden → 120 min
activity_minutes min: 2 Std 15 → 135 min
activity_minutes min: eine halbe Stunde → 30 min
activity_minutes min: anderthalb Stunden → 90 min
activity_minutes min: eine Viertelstunde → 15 min
activity_minutes min: eine Dreiviertelstunde → 45 min
activity_minutes min: fünfmal 30 Minuten → 150 min
activity_minutes min: gar nichts → 0 min
activity_minutes min: 30 Minuten am Tag → ask 210 min
five_chair_stands s: 14,5 Sekunden → 14.5 s
five_chair_stands s: nicht geschafft → ask
"""

FRENCH = """
weight kg: 82,4 → 82.4 kg
weight kg: 82.4 → 82.4 kg
weight kg: 82,4 kg → 82.4 kg
weight kg: 82,4 kilos → 82.4 kg
weight kg: poids 82,4 → 82.4 kg
weight kg: Je pèse 82,4 kg → 82.4 kg
weight kg: c'est 82,4 ce matin → 82.4 kg
weight kg: quatre-vingt-deux virgule quatre → 82.4 kg
weight kg: quatre vingt deux et demi → 82.5 kg
weight kg: quatre-vingt-deux kilos et demi → 82.5 kg
weight kg: soixante-dix-sept → 77 kg
weight kg: septante-sept → 77 kg
weight kg: quatre-vingt-dix-neuf → 99 kg
weight kg: cent deux → 102 kg
weight kg: environ 82 → 82 kg
weight kg: 82 kilos 400 → 82.4 kg
weight kg: 82,4 à 7 h → 82.4 kg
weight kg: 181 livres → ask 90.5 kg
weight lb: 181 livres → 181 lb
weight lb: 181 → 181 lb
weight kg: 82 à 84 → ask
weight kg: entre 82 et 84 → ask
weight kg: 82 ou 83 → ask
weight kg: j'ai perdu 2 kilos → ask
weight kg: plus de 82 → ask
weight kg: 824 → ask 82.4 kg
weight kg: aucune idée → ask
waist cm: 94 → 94 cm
waist cm: 94 cm → 94 cm
waist cm: tour de taille 94 → 94 cm
waist cm: quatre-vingt-quatorze → 94 cm
waist cm: 94 et 94,5 → 94.25 cm x2
waist cm: 37 pouces → 37 in
waist cm: 37 pouces et demi → 37.5 in
height cm: 1,65 → 165 cm
height cm: 1m65 → 165 cm
height cm: 1 m 65 → 165 cm
height cm: un mètre soixante-cinq → 165 cm
height cm: 5 pieds 7 → 67 in
height cm: 5 pi 7 po → 67 in
resting_heart_rate bpm: 72 → 72 bpm
resting_heart_rate bpm: pouls 72 → 72 bpm
resting_heart_rate bpm: 72 pulsations par minute → 72 bpm
resting_heart_rate bpm: 72 battements à la minute → 72 bpm
resting_heart_rate bpm: 18 en 15 s → 72 bpm @15
resting_heart_rate bpm: 18 battements en 15 secondes → 72 bpm @15
resting_heart_rate bpm: 36 en une demi-minute → 72 bpm @30
resting_heart_rate bpm: 18 fois 4 → 72 bpm @15
resting_heart_rate bpm: soixante-douze → 72 bpm
blood_pressure mmHg: 128/82 → 128/82
blood_pressure mmHg: 128 sur 82 → 128/82
blood_pressure mmHg: tension 128/82 → 128/82
blood_pressure mmHg: cent vingt-huit sur quatre-vingt-deux → 128/82
blood_pressure mmHg: 128/82 pouls 70 → 128/82
blood_pressure mmHg: 12/8 → ask 120 mmHg
blood_pressure mmHg: 12,8 → ask
energy points: 7 → 7 points
energy points: sept → 7 points
energy points: 7 sur 10 → 7 points
energy points: 7/10 → 7 points
energy points: je dirais 7 → 7 points
energy points: 7 ou 8 → ask
energy points: sept et demi → ask 8 points
chair_stand_30s reps: douze → 12 reps
chair_stand_30s reps: 12 fois → 12 reps
activity_minutes min: 150 minutes → 150 min
activity_minutes min: 2 heures → 120 min
activity_minutes min: 2h30 → 150 min
activity_minutes min: deux heures et demie → 150 min
activity_minutes min: une demi-heure → 30 min
activity_minutes min: trois quarts d'heure → 45 min
activity_minutes min: rien → 0 min
activity_minutes min: 30 min par jour → ask 210 min
five_chair_stands s: 14,5 secondes → 14.5 s
"""

POLISH = """
weight kg: 82,4 → 82.4 kg
weight kg: 82.4 → 82.4 kg
weight kg: 82,4 kg → 82.4 kg
weight kg: waga 82,4 → 82.4 kg
weight kg: Ważę 82,4 kg → 82.4 kg
weight kg: moja waga to 82,4 → 82.4 kg
weight kg: dziś rano 82,4 → 82.4 kg
weight kg: osiemdziesiąt dwa przecinek cztery → 82.4 kg
weight kg: osiemdziesiat dwa i pol → 82.5 kg
weight kg: osiemdziesiąt dwa i pół kilo → 82.5 kg
weight kg: sto dwa → 102 kg
weight kg: około 82 → 82 kg
weight kg: ok. 82 kg → 82 kg
weight kg: około osiemdziesięciu dwóch kilogramów → 82 kg
weight kg: mniej więcej 82 → 82 kg
weight kg: 82 kg 400 → 82.4 kg
weight kg: 82 kilo i 400 gramów → 82.4 kg
weight kg: 82,4 o 7 rano → 82.4 kg
weight kg: 181 funtów → 181 lb
weight kg: 82 do 84 → ask
weight kg: między 82 a 84 → ask
weight kg: 82 lub 83 → ask
weight kg: schudłam 2 kilo → ask
weight kg: ponad 82 → ask
weight kg: 824 → ask 82.4 kg
weight kg: nie wiem → ask
waist cm: 94 → 94 cm
waist cm: 94 cm → 94 cm
waist cm: talia 94 → 94 cm
waist cm: w pasie 94,5 → 94.5 cm
waist cm: dziewięćdziesiąt cztery → 94 cm
waist cm: 94 i 94,5 → 94.25 cm x2
waist cm: 37 cali → 37 in
height cm: 1,65 → 165 cm
height cm: 1 m 65 → 165 cm
height cm: metr sześćdziesiąt pięć → ask
height cm: 165 cm wzrostu → 165 cm
resting_heart_rate bpm: 72 → 72 bpm
resting_heart_rate bpm: tętno 72 → 72 bpm
resting_heart_rate bpm: 72 uderzenia na minutę → 72 bpm
resting_heart_rate bpm: 18 w 15 s → 72 bpm @15
resting_heart_rate bpm: 18 uderzeń w 15 sekund → 72 bpm @15
resting_heart_rate bpm: 18 na 15 sekund → 72 bpm @15
resting_heart_rate bpm: 36 przez pół minuty → 72 bpm @30
resting_heart_rate bpm: 18 razy 4 → 72 bpm @15
resting_heart_rate bpm: siedemdziesiąt dwa → 72 bpm
blood_pressure mmHg: 128/82 → 128/82
blood_pressure mmHg: 128 na 82 → 128/82
blood_pressure mmHg: ciśnienie 128 na 82 → 128/82
blood_pressure mmHg: sto dwadzieścia osiem na osiemdziesiąt dwa → 128/82
blood_pressure mmHg: 128/82 puls 70 → 128/82
blood_pressure mmHg: 128 → ask
energy points: 7 → 7 points
energy points: siedem → 7 points
energy points: 7 na 10 → 7 points
energy points: 7 z 10 → 7 points
energy points: raczej 4 → 4 points
energy points: 7 albo 8 → ask
energy points: siedem i pół → ask 8 points
chair_stand_30s reps: dwanaście → 12 reps
chair_stand_30s reps: 12 razy → 12 reps
activity_minutes min: 150 minut → 150 min
activity_minutes min: 2 godziny → 120 min
activity_minutes min: 2 godz. 15 min → 135 min
activity_minutes min: dwie i pół godziny → 150 min
activity_minutes min: półtorej godziny → 90 min
activity_minutes min: pół godziny → 30 min
activity_minutes min: godzinę → 60 min
activity_minutes min: nic → 0 min
activity_minutes min: 30 minut dziennie → ask 210 min
five_chair_stands s: 14,5 sekundy → 14.5 s
"""

ARABIC = """
weight kg: ٨٢٫٤ → 82.4 kg
weight kg: ٨٢,٤ → 82.4 kg
weight kg: 82.4 → 82.4 kg
weight kg: ٨٢ → 82 kg
weight kg: ٨٢٫٤ كجم → 82.4 kg
weight kg: 82.4 كيلو → 82.4 kg
weight kg: وزني ٨٢٫٤ → 82.4 kg
weight kg: وزني اليوم 82.4 كغ → 82.4 kg
weight kg: الوزن: ٨٢٫٤ → 82.4 kg
weight kg: اثنان وثمانون فاصلة أربعة → 82.4 kg
weight kg: اثنين وثمانين كيلو ونصف → 82.5 kg
weight kg: اثنان وثمانون → 82 kg
weight kg: مئة واثنان → 102 kg
weight kg: حوالي ٨٢ → 82 kg
weight kg: تقريبا 82 كيلو → 82 kg
weight kg: ٨٢ كيلو و٤٠٠ غرام → 82.4 kg
weight kg: ٨٢٫٤ الساعة ٧ صباحا → 82.4 kg
weight kg: ۸۲٫۴ → 82.4 kg
weight kg: ١٨١ باوند → 181 lb
weight kg: 181 رطل → ask 181 lb
weight kg: من ٨٢ إلى ٨٤ → ask
weight kg: بين 82 و84 → ask
weight kg: ٨٢ أو ٨٣ → ask
weight kg: نزلت ٢ كيلو → ask
weight kg: أكثر من 82 → ask
weight kg: ٨٢٤ → ask 82.4 kg
weight kg: لا أعرف → ask
waist cm: ٩٤ → 94 cm
waist cm: ٩٤ سم → 94 cm
waist cm: الخصر ٩٤ → 94 cm
waist cm: أربعة وتسعون → 94 cm
waist cm: ٩٤ و ٩٤٫٥ → 94.25 cm x2
waist cm: 37 بوصة → 37 in
height cm: ١٦٥ → 165 cm
height cm: ١٫٦٥ → 165 cm
height cm: 165 سم → 165 cm
resting_heart_rate bpm: ٧٢ → 72 bpm
resting_heart_rate bpm: النبض ٧٢ → 72 bpm
resting_heart_rate bpm: 72 نبضة في الدقيقة → 72 bpm
resting_heart_rate bpm: ١٨ في ١٥ ثانية → 72 bpm @15
resting_heart_rate bpm: 18 نبضة في 15 ثانية → 72 bpm @15
resting_heart_rate bpm: ٣٦ في نصف دقيقة → 72 bpm @30
resting_heart_rate bpm: 18 ضرب 4 → 72 bpm @15
resting_heart_rate bpm: اثنان وسبعون → 72 bpm
blood_pressure mmHg: ١٢٨/٨٢ → 128/82
blood_pressure mmHg: 128 على 82 → 128/82
blood_pressure mmHg: الضغط ١٢٨ على ٨٢ → 128/82
blood_pressure mmHg: مئة وثمانية وعشرون على اثنين وثمانين → 128/82
blood_pressure mmHg: 128/82 النبض 70 → 128/82
blood_pressure mmHg: ١٢٨ → ask
energy points: ٧ → 7 points
energy points: سبعة → 7 points
energy points: ٧ من ١٠ → 7 points
energy points: 7/10 → 7 points
energy points: طاقتي ٧ → 7 points
energy points: ٧ أو ٨ → ask
energy points: سبعة ونصف → ask 8 points
chair_stand_30s reps: اثنا عشر → 12 reps
chair_stand_30s reps: ١٢ مرة → 12 reps
activity_minutes min: ١٥٠ دقيقة → 150 min
activity_minutes min: ساعتين → 120 min
activity_minutes min: ساعتين ونصف → 150 min
activity_minutes min: نصف ساعة → 30 min
activity_minutes min: ساعة وربع → 75 min
activity_minutes min: لا شيء → 0 min
activity_minutes min: ٣٠ دقيقة يوميا → ask 210 min
five_chair_stands s: ١٤٫٥ ثانية → 14.5 s
"""

CORPUS = {"en": ENGLISH, "es": SPANISH, "de": GERMAN, "fr": FRENCH, "pl": POLISH, "ar": ARABIC}
