"""English: the concepts of danger signs, and the answers to "Is it happening now?"."""

from __future__ import annotations

from core.language.concepts import Answer
from core.language.concepts import Concept as C

CONCEPTS: dict[C, str] = {
    # parts of the body
    C.CHEST: (
        "chest, breastbone, breast bone, sternum, ribcage, rib cage, chets, breast, me chest, ma chest, boobs, "
        "bosom, left side of my chest, upper body, chst, behind my ribs, under my ribs, between my ribs, middle of "
        "me chest, band round my ribs, round my ribs, ribs, front of me, across my front, centre of me, middle of "
        "me, top of my tummy and chest, behind the breastbone, solar plexus, "
        "behind the ribs, under my ribs on the left, between my boobs, behind my boobs"
    ),
    C.HEART: (
        "heart, heartbeat, heart beat, heartrate, heart rate, pulse, ticker, hart, hearts, heart's, "
        "me heart, ma heart, beats, beat"
    ),
    C.ARM_OR_JAW: (
        "jaw, left arm, both arms, shoulder blade, shoulder blades, neck, between my shoulders, "
        "left shoulder, arm, back of my neck, upper back"
    ),
    C.FACE: (
        "face, mouth, smile, eyelid, lip, cheek, side of my face, side of her face, jaw line, half my face, "
        "half of my face, "
        "mouths, mouth's, faces gone, one side of my mouth, lips on one side, cheeks, cheek's"
    ),
    C.LIPS_OR_TONGUE: "lips, lip, tongue, eyelids, eyes, mouth, face",
    C.THROAT: "throat, windpipe, airway, neck, gullet, swallowing",
    C.LIMB: (
        "arm, leg, hand, foot, arms, left side, right side, side of my body, side of me, one side, "
        "fingers, grip, whole side, hands, legs, fist, thumb, knee, whole left, whole right, "
        "half my body, half of my body, left half, right half"
    ),
    C.LEG: (
        "leg, calf, thigh, ankle, foot, shin, lower leg, knee, back of my knee, behind my knee, toes, "
        "left leg, right leg"
    ),
    C.LEGS: "legs, calves, ankles, feet, thighs, both legs, both ankles",
    C.EYE: "eye, eyes, left eye, right eye, one eye",
    C.JOINT: (
        "knee, hip, ankle, back, shoulder, joint, muscle, calf, hamstring, groin, wrist, elbow, thigh, "
        "achilles, quad, ligament, tendon"
    ),
    # heart
    C.CHEST_PAIN: (
        "angina, chestpain, chest pain, heartpain, elephant on my chest, someone .. sitting on my chest, "
        "heartburn like, pain round my heart, elephant sat on me, elephant sitting on me, elephant on me, "
        "stood on my chest, standing on my chest, kicked in the chest, kicked by a horse, kicked by a mule, "
        "someone sat on my chest, crushing feeling, crushing pain, its my heart i think, think its my heart, "
        "chest is killing, chests killing, chest killing, chest has been killing, my heart is killing, elephant sat "
        "on, elephant sitting on, elephant .. on me, elephant stood on, horse .. on my chest, grinding in my chest, "
        "tearing in my chest, ripping in my chest, "
        "used my gtn, used gtn, used the gtn, gtn twice, gtn spray twice, had my spray twice, used my spray twice, "
        "nitro twice, angina spray isnt, angina spray not, gtn isnt, gtn not, gtn hasnt, gtn spray isnt, gtn spray "
        "not, spray isnt touching it, "
        "chest hurts, chest is hurting, chesst hurts, chest killing me, chest is killing me, chests killing me, my "
        "chest kills, heart is killing me, chest feels crushed, chest being crushed, chest is caving in, chest "
        "caving, chest is exploding, chest is going to explode, chest is on fire, chests on fire, fire in my chest, "
        "burning in my chest, knife in my chest, knife through my chest, knife between my ribs, stabbed in the chest, "
        "punched in the chest, punch in the chest, thumped in the chest, band across my chest, band round my chest, "
        "tight across my chest, tightness across, chest has gone tight, chest gone tight, chest all tight, chests "
        "tight, chest feels tight, chest feels heavy, chest is heavy, heavy chest, tight chest, pains in my chest, "
        "pain in me chest, pain across my chest, pain behind my breastbone, pain between my shoulder blades and, pain "
        "going down my left arm, pain down my left arm, pain up my jaw, pain in my jaw and arm, hurts down my left "
        "arm, left arm and jaw"
    ),
    C.HEART_ATTACK: "heart attack, cardiac arrest, coronary, heartattack, heart attak",
    C.HURT: (
        "pain*, hurt*, ache, aches, aching, achy, sore, burning, burns, stabbing, stabs, stab, discomfort, "
        "uncomfortable, twinge*, cramp*, throbbing, agony, agonising, knife, gripping, spasm, burnin, hurtin, achin, "
        "killing, murder, sting, stinging, prickling, electric, tearing, ripping, shooting, stabby, on fire, burn, "
        "sharp, squeezed, squeezing, crushed, crushing, gripped, in a vice, clamped, killin, killin me, paining, is "
        "paining, giving me jip, giving me gyp, giving me grief, playing up something, "
        "killing me"
    ),
    C.PRESS: (
        "tight*, pressure, pressing, squeez*, crush*, heavy, heaviness, constrict*, weight, band, vice, vise, "
        "elephant, clamped, brick, full, fullness, sitting on, funny, strange, weird, odd, clenched, clench, clamp, "
        "strangling, tightening up, tightness, someone standing on, standing on, belt round, wrapped round, bear hug, "
        "like a fist, fist, stone, rock, ton of bricks, lead weight, concrete, suffocating, boot, car parked, parked "
        "a car, parked his car, parked a lorry, parked a bus, lorry on, truck on, bus on, van on, car on my, anvil, "
        "boulder, sandbag, bag of cement, slab, paving slab, breeze block, sitting right on, someone sat, somebody "
        "sat, somebody sitting, somebody standing, someone kneeling, kneeling on, weighing down, rope round, corset, "
        "girdle, belt pulled, wound tight, clamped round"
    ),
    C.SPREADS: ("spreading, spreads, radiat*, moved to, going down, into my arm, into my jaw, going up"),
    C.CLUTCH: "clutching, holding, grabbing, clutches, grabbed, clutched",
    C.RACING: (
        "racing, races, raced, race, pounding, pounds, pounded, flutter*, skips, skipping, skipped, "
        "skip, irregular*, uneven, thumping, thumps, all over the place, missing beats, misses beats, "
        "missing a beat, missed beats, hammering, beating fast, beating very fast, beating too fast, "
        "beating so fast, out of rhythm, jumping, going mad, going like the clappers, going crazy, "
        "going nuts, wont slow down, galloping, extra beats, too fast, so fast, really fast, very fast, "
        "out of my chest, going hard, fast for no reason, somersault*, flip flop*, flipping, flips, "
        "ten to the dozen, nineteen to the dozen, all over the shop, thud*, banging, bang, bounding, "
        "stops and starts, stopping and starting, missing, misses, dodgy, erratic, jumpy, "
        "a mile a minute, mile a minute, haywire, bumping, like a drum, drum, drumming, like mad, "
        "like crazy, leaping, lurch*, tumbling, palpitat*, stops then, pauses, too quick, quickly, "
        "speeding, wobbling, quiver*, turning over, off the scale, funny, strange, weird, odd, so quick, "
        "very quick, goes fast, going fast, fast all day, wont settle, thud thud, pounding away, thumpy, "
        "going too, going really, going off on one, bouncing, dancing, doing cartwheels, cartwheels, "
        "wont calm down, wont calm, out of time, off beat, off its beat, not regular, not steady, "
        "up and down, stopped for a second, stutters, stuttering, hiccup, hiccups, missing every, extra, "
        "big thump, pumping, over a hundred, through the roof, sky high"
    ),
    C.PALPITATIONS: (
        "palpitation*, palps, arrhythmia, fibrillation, afib, heart flutter*, racing heart, "
        "irregular heartbeat*, irregular pulse, ectopic*, heart palps, svt, atrial, heart arrhythmia, "
        "funny heartbeat*, skipped beats, skipped heartbeat*, ectopics"
    ),
    C.COLD_SWEAT: (
        "cold sweat*, clammy, sweating for no reason, sweaty for no reason, breaking out in a sweat, "
        "broke out in a sweat"
    ),
    # brain
    C.STROKE: (
        "stroke, mini stroke, ministroke, brain bleed, brain haemorrhage, brain hemorrhage, half of it hangs down, "
        "dribbling my tea, mouth wont work"
    ),
    C.DROOP: (
        "droop*, crooked, lopsided, fallen, hanging, dropped, drooped, sagging, sagged, slipped, wonky, "
        "uneven, twisted, slid, droopy, dropping, gone down on one side, wont smile, lop sided, "
        "pulled down, gone funny, gone slack, slack, sideways, squint, "
        "gone droopy, drooping, has dropped, has slipped, slid down, slipped down, fallen on one side, gone lopsided, "
        "gone wonky, skew whiff, hangs lower, slack on one side, melted, looks melted, "
        "is sleeping, asleep, gone to sleep, gone dead, looks different from the other, isnt matching, doesnt match, "
        "not matching, cant smile, smile is wonky, smiles wonky, smiles lopsided, smile is lopsided, smile gone"
    ),
    C.NUMB: (
        "numb*, paralys*, paralyz*, tingl*, pins and needles, no feeling, lost feeling, lost all feeling, gone dead, "
        "cant feel, cannot feel, gone numb, asleep, no sensation, lost sensation, tingly, pins, gone to sleep, no "
        "feelin, cant feel me, cannae feel, feels dead, gone all dead, fizzy, deadened, frozen, gone stiff and numb, "
        "lost all sensation, dead to the touch, pins and needles down my left, pins and needles down my right, pins "
        "and needles all down, dont feel nothing, cant feel nothing, no feeling in, dont feel anything, cant feel "
        "anything, gone to sleep and wont, lost the feeling, feeling has gone, is asleep and, feels like its not "
        "mine, like its not my, feels like rubber, feels like wood, feels like plastic, feels like cotton, feels like "
        "lead, feels like jelly down one, "
        "dead weight"
    ),
    C.LIMP: (
        "floppy, limp, gone dead, useless, wont work, stopped working, not working, wont do what i tell, wont obey, "
        "gave out, gone heavy, lost strength, no strength, no power, lost the use, lost all power, wont lift, "
        "wont move, wont respond, not responding, dropping things, keeps dropping, gone weak, went weak, "
        "lost all strength, giving way, cant control, dropped my, keep dropping, dragging, drags, wont grip, "
        "lost my grip, like jelly, like lead, like rubber, doesnt feel like mine, doesnt belong to me, not mine, "
        "wont go up, falls down, gone to sleep and wont, doesnt work, does not work, not obeying, "
        "fell out of my hand, wobbly on one, wont hold, wont take my weight, wont carry, gone from under, "
        "keeps giving, buckled, collapsing on one side, wont listen, ignoring me, hanging off, dangling, no use, "
        "falls out of my hand, fall out of my hand, fell from my hand, slips out of my hand, "
        "falls out of my fingers, "
        "wont grip nothing, wont grip anything, cant grip, cant hold a cup, cant hold my cup, cant hold a pen, cant "
        "hold anything, dropping everything, keep dropping things, keeps dropping things, dropped the mug, dropped my "
        "mug, dropped my cup, dropped the cup, drops everything, wont close, wont make a fist, hangs there, just "
        "hangs, hanging there, hanging useless, is useless, gone useless, gone limp, drags behind, leg drags, foot "
        "drags, wont follow"
    ),
    C.WEAK: "weak, weakness, floppy, no strength, feeble, gone weak, went weak, suddenly weak",
    C.ONE_SIDE: (
        "one side, left side, right side, left arm, right arm, left leg, right leg, one arm, one leg, "
        "arm went, leg went, down one side"
    ),
    C.CANNOT: (
        "cant, cannot, can not, couldnt, could not, unable, not able, hardly, barely, struggling to, "
        "struggle to, trouble, difficulty, hard to, difficult to, hard work, havent been able, "
        "impossible to, cant seem to, cant even, wont let me, stopped being able, battling to, cannae, "
        "canny, dinnae, wont, struggling, having trouble, struggle, no way i can, cant hardly, "
        "failing to, not managing to, battling"
    ),
    C.MOVE: ("move, moving, lift, lifting, raise, raising, feel, hold, holding, grip, use, pick up, grab, bend"),
    C.SPEAK: (
        "speak, talk, get my words out, find my words, get words out, string a sentence, get a word out, "
        "speak properly, say anything, form words, find the words, say the words, speaking, talking, "
        "get words, sentence out, get my sentences, talking straight, talk straight, talk properly, "
        "speak right, talk right, string words, say what i mean, make words"
    ),
    C.SPEECH: "speech, speaking, words, talking, voice, sentences, say things, sounds, sentence",
    C.GARBLED: (
        "slur*, jumbled, funny, odd, weird, garbled, strange, mixed up, wrong, nonsense, rubbish, gibberish, "
        "muddled, mumbling, thick, mush, mushy, not making sense, no sense, scrambled, backwards, drunk, "
        "coming out, come out, came out, all wrong, not right, cant understand me, makes no sense, "
        "nobody can understand, wont come out, come out wrong, comes out wrong, coming out wrong, "
        "comes out as, coming out as, wont come right, comes out all"
    ),
    C.SLURRED: (
        "slurring, slurred, talking gibberish, speaking gibberish, gibberish, talking nonsense, "
        "not making any sense, tongue feels thick, sound drunk, sounding drunk, sounds drunk, "
        "talking like im drunk, talks like hes drunk, cant string, mumbling, talking rubbish, coming out jumbled, "
        "all jumbled, comes out jumbled, coming out all wrong, speech has gone, speech is off, words are jumbled, "
        "words all jumbled, sentences dont make sense, something else comes out, comes out something else, "
        "the wrong word comes out, other words come out, "
        "words are coming out, words coming out all wrong, words come out all, words came out all, words wont come, "
        "words wont form, cant get my words out, cant get me words out, cant get the words, cant get words out, "
        "couldnt get a word out, cant form words, cant find the words, cant string a sentence, talking double dutch, "
        "speechs gone, speech gone, speech is all over, tongue wont work, tongue tied and, tongue wont do, talking "
        "like ive had a stroke, wrong words keep coming, wrong word keeps coming, mixing up my words, muddling my "
        "words, garbling my"
    ),
    C.SEE: "see, seeing, vision, sight",
    C.SIGHT_LOST: (
        "lost my sight, lost my vision, lost vision, lost sight, loss of vision, loss of sight, "
        "double vision, suddenly blind, gone blind, went blind, going blind, sight has gone, "
        "vision has gone, vision went, sight went, sight gone, vision gone, trouble seeing, seeing double, "
        "sudden blindness, blind in one eye, blind in my left eye, blind in my right eye, blurred vision, "
        "vision blurred, vision is blurred, blurry vision, curtain came down, curtain over my eye, "
        "curtain coming down, half my vision, everything is double, eye has gone black, eye went black, "
        "eye has gone dark, like a curtain, cant see properly all of a sudden, sight in one eye, "
        "half of everything, everything went blurry, gone blurry, went blurry, blind spot has, "
        "eyesight gone, eyesight went, lost the sight, lost half my sight, cant see out of, "
        "cannot see out of, gone black in one eye, eye just went, one eye has gone, one eye went, "
        "everything went double, two of everything, zigzag lines all of a sudden, grey patch, seeing two of, "
        "shadow across, shadow over my eye, veil over my eye, grey veil, curtain over, flashes and floaters, "
        "floaters and flashes, flashing lights and floaters, black spots everywhere, shower of floaters, "
        "sudden floaters, lots of floaters, cant see half, half my sight, half of my vision, "
        "vision is going, sight is going, everything has gone dark, went black in one eye, "
        "lost half my vision, vision just vanished, vision vanished, cant see properly out, "
        "everything is blurry, everything blurred, blurred in one eye, lights flashing in my eye, "
        "black curtain, black in my, cant see on the left, cant see on the right, cant see the left, "
        "cant see the right, "
        "half of everything is missing, half the room is missing, half the screen is missing, half the page, only see "
        "half, can only see half, see half of, ones eye gone, eyes gone dark, eye gone black, eye went dark, going "
        "blind in, blind in one, blind in my, blind in me, nothing out of my left eye, nothing out of my right eye, "
        "visions gone, sights gone, see double, everythings double, tunnel vision, curtain over my, shadow over my, "
        "grey curtain, dark curtain, blurry in one eye, one eye blurry, gone blurry in, grey blob in, black blob in, "
        "black spot in my eye, hole in my vision"
    ),
    C.CONFUSED: (
        "confus*, muddled, disoriented, disorientated, dazed, bewildered, not making sense, mixed up, "
        "addled, not with it, doesnt know who, confused"
    ),
    C.LOST_BEARINGS: (
        "dont know where i am, do not know where i am, dont know what day it is, cant work out where i am, "
        "cant remember my own name, cant think straight all of a sudden, what day it is or, "
        "which room im in, dont recognise my own, dont know who i am, no idea where i am, no idea what day, "
        "cant remember where i live, dont recognise my house, dont know how i got here, "
        "no idea how i got here, not sure how i got here, dont remember how i got, cant remember how i got, "
        "cant remember the names of, cant remember my name, forgot my own name, cant remember who i am, "
        "cant recognise my own, dont know what year, cant make sense of anything, "
        "dont know what day, dont know my own name, cant remember my own, cant remember where, dont recognise the, "
        "dont know how to get home, dont know how i got, forgot where i live, cant think straight suddenly, all "
        "muddled, muddled up in my head, confused as anything, head is all over the place and i dont know"
    ),
    C.HEADACHE: (
        "headache*, head ache, migraine*, head hurts, pain in my head, head is splitting, "
        "head is pounding, head pain, head feels like it, head is exploding, head exploded, "
        "head has exploded, head felt like, head going to explode, skull"
    ),
    C.WORST: (
        "worst, like a bang, thunderclap, exploded, like a hammer, like being hit, like a bomb, never had .. like, "
        "like never before, worse than ever, out of nowhere, came on like, stiff neck, blinding, like a clap of "
        "thunder, hit by a bat, hit by a hammer, worst ever, never had anything like, never known one like, never "
        "had one like, never had a headache like"
    ),
    C.SEVERE: (
        "severe*, terribl*, splitting, blinding, awful, very bad, bad, really bad, horrible, extreme*, "
        "unbearable, intense, horrific, dreadful, serious*"
    ),
    C.SUDDEN: (
        "sudden*, all of a sudden, out of the blue, out of nowhere, just now, just gone, has just, "
        "just went, instantly, in a second, like a switch, from one minute"
    ),
    C.FAINTED: (
        "just dropped to the, dropped to the floor, he just dropped, she just dropped, blacked out, "
        "fainted, fainting, faints, faint dead, passed out, passing out, pass out, passes out, past out, blacked out, "
        "blacking out, black out, blackout, black outs, collaps*, keeled over, lost consciousness, lost conciousness, "
        "losing consciousness, lose consciousness, unconscious, unconcious, unresponsive, knocked out, out cold, "
        "syncope, about to faint, going to faint, gonna faint, nearly fainted, almost fainted, went down like, hit "
        "the deck, wont wake up, not waking up, cant wake, went out like a light, dropped to the floor, not "
        "responding, isnt responding, fell unconscious, went over, lost time, zonked, dropped like, dropped to the "
        "ground, gone unresponsive, not breathing and, isnt moving, not moving, lifeless, wont come round, cant "
        "rouse, cant wake him, cant wake her, wont respond, went down in a heap, went limp, slumped, gone limp, "
        "nearly passed out, legs went from under me, i went down, come over faint, came over faint, come over all "
        "faint, took a funny turn, had a funny turn, took a turn, funny turn, keeled, blackd out, passd out, fainted "
        "clean, lights went out, went out cold, flat out on the floor, found me on the floor, found him on the floor, "
        "found her on the floor, fell flat, dropped, hit the carpet, woke up on, swooned, gone unconscious, "
        "unrousable, wont open his eyes, wont open her eyes, no response, isnt answering, not answering me, just "
        "dropped, gone down, in a heap, floor .. not answering, floor .. not moving, floor .. wont, went black and "
        "next thing, wont wake, not waking, doesnt wake, grey and wont, not conscious, im gonna go, about to go down, "
        "about to keel over, about to pass out, gone down like, went down like a sack, went all floppy, lost a few "
        "minutes, came to on, went blank and, on the deck in, found on the floor, found me out cold, came over all "
        "weird and fell, legs gave way, legs just went, legs gave out, used to faint, keep keeling over, keeling "
        "over, im off again, going off again, cant answer me, wont answer me, doesnt answer me, went clean out, clean "
        "out on, went out on the bus, looking at the ceiling, legs turned to water, turned to water and down, must "
        "have been out, must of been out, mustve been out, sparked out, out for the count, decked it, dropped like a "
        "stone, dropped like a sack, crumpled to, zonked out on the floor, everything went black, went all black, all "
        "went black, all went dark, greyed out, whited out, blanked out, lost conscious, loss of consciousness, going "
        "to pass out, gonna pass out, almost passed out, gonna keel over, keep blacking out, keep passing out, "
        "was out for a minute, been out for a minute, been out a minute, been out for a few minutes, of been out, was "
        "out cold, "
        "flaked out, conked out, crumpled, hit the floor, hit the ground, was out for, out for a minute, out for a "
        "few"
    ),
    C.CAME_ROUND: (
        "came round, came to, woke up, come round, found myself, coming round, ended up, "
        "next thing i knew, next thing i was, was on, woke, wake up, "
        "next thing i know, next thing im, next thing, come too, came too, coming to, came to my senses, woke up to "
        "find, opened my eyes"
    ),
    C.FLOOR: "floor, ground, carpet, tiles, lino, pavement, lawn, floorboards, hall",
    C.SEIZURE: (
        "having fits, having a fit, had a fit, is fitting, started fitting, had fits, she's fitting, he's fitting, "
        "seizure*, siezure*, having a fit, had a fit, having fits, has a fit, took a fit, taken a fit, epileptic fit, "
        "epilep*, convuls*, fitting, grand mal, thrown a fit, fits, a fit, shaking all over, went stiff and, stiff "
        "and shaking, foaming at the mouth, frothing at the mouth, thrashing about, eyes rolled, eyes rolling, fit "
        "just now, had one of my fits, having one of his fits, having one of her fits, went into spasm, shook all "
        "over, jerked all over, twitching and, convulsing, tonic clonic, an absence, wet myself and shook, blank and "
        "twitching, eyes rolled back, jaw clamped, fit and wet myself, had a seizure, having a seizure, having "
        "seizures, convulsions, shaking all over and cant stop, jerking all over, arms and legs jerking, bit my "
        "tongue, bitten my tongue, bitten my tongue and, staring spells"
    ),
    C.JERKING: (
        "shaking all over .. control, jerking uncontroll*, whole body jerk*, body was jerking, "
        "body .. shook uncontroll*, jerking all over, wont stop jerking, cant stop jerking, "
        "shaking uncontrollably, twitching all over, bitten my tongue, bit my tongue, "
        "shaking and couldnt stop, twitching and couldnt, jerk all over, limbs were jerking, "
        "arms and legs jerking, arms and legs were, arms and legs going"
    ),
    C.DIZZY: (
        "dizz*, light headed, lightheaded*, light headedness, giddy, giddiness, vertigo, woozy, feel faint, "
        "feeling faint, felt faint, bit faint, faint feeling, room is spinning, everything is spinning, "
        "went black, goes black, went dark, room spins, room spinning, head is spinning, head spins, "
        "head spinning, room goes round, room going round, everything goes round, swimmy head, head swims, "
        "head swimming, unsteady, off balance, wobbly, swaying, spinny, the room spin, head goes, headed, "
        "dizzee, spinning, spins, faintness, keel over, legs like jelly, head rush, headrush, "
        "the walls move, floor moves, on a boat, swimmy, seeing stars, light in the head, "
        "everything going dark, gone all swimmy, whooshy, cant walk straight, staggering, feel drunk, "
        "walking like im drunk, veering, bumping into things, lost my balance, no balance"
    ),
    C.AGAIN: (
        "again, keep, keeps, keep getting, every, often, always, constantly, still, lately, for days, "
        "all the time, each, several, repeatedly, most days, all day, since, all week, twice, "
        "three times, yesterday, times, days, third day, third time, second time, on and off, this week, "
        "whenever, for a week, for weeks, few days, spells, nonstop, recently, more and more, usual, "
        "normal, "
        "everytime, every time, each time, every single time"
    ),
    # breath
    C.BREATHE: (
        "breath*, breathing, catch my breath, get my breath, draw breath, get air, breath in, get enough air, inhale"
    ),
    C.CHOKING: (
        "cant breathe, cannot breathe, can not breathe, couldnt breathe, suffocat*, choking, gasping, gasps, gasping "
        "for air, fighting for breath, fighting for air, fight for breath, struggling for breath, struggling for air, "
        "not breathing, stopped breathing, isnt breathing, hardly breathe, barely breathe, drowning in, cant get air, "
        "no air going in, no air, smothering, cant catch a breath, wheezing badly, hardly talk, hardly speak, cant "
        "finish a sentence, cant get a full breath, breathing has gone, fighting to breathe, air wont go in, throat "
        "closed, cant get my breath, cant catch my breath, breathing stopped, lungs arent working, cant get a breath, "
        "cant take a breath, cant draw breath, fighting for every breath, cant get breath, every breath is, cannae "
        "breathe, not able to breathe, unable to breathe, barely breathing, hardly breathing, fighting to get air, "
        "air isnt going in, breath wont come, breaths wont come, cant pull in, sucking for air, lungs full, gulping "
        "for air, gurgling, rattling when i breathe, blue in the face, pink froth, frothy stuff, coughing up froth, "
        "pink foam, stuck in my throat, stuck in his throat, stuck in her throat, gone down the wrong way and, cant "
        "speak for lack, too breathless to, cant finish my sentences, hunched over trying, windpipe, trying to "
        "breathe, sat bolt upright, gulping air, cant get me breath, airway, airways are closing, lungs are full, "
        "cant suck in, choked on, choking on, cant swallow and cant, barely get a breath, fish out of water, like a "
        "fish, breathing like a fish, ribs sucking in, sucking in between, whistling when i breathe, rattling like, "
        "rattles like, air wont come, cant get the air in, cant pull air in, cant suck air in, crackle when i "
        "breathe, crackling when i breathe, crackle every time i breathe, asthma attack, asthma attacks, attack of "
        "asthma, throat is blocked, throats blocked, stuck in me throat, stuck in my windpipe, stuck in my gullet, "
        "something stuck in, cant cough it up, cant get it up, stop for air, have to stop for air, two words out "
        "before, three words out before, few words out before, one word at a time, cant finish my sentence, cant "
        "finish sentences, cant speak in full, breath between words, gasp between words, like drowning, like im "
        "drowning, feels like drowning, breathing through a sponge, breathing through mud, breathing through treacle, "
        "breathing through cotton, chest wont expand, chest wont open, lungs wont fill, lungs wont open, lungs arent "
        "filling, lungs are closing, lungs closing, lungs full of water, lungs filling up, lungs feel full, nothing "
        "going into my lungs, nothing is going in, nothing goes in, no oxygen, not enough oxygen, need oxygen, "
        "starved of oxygen, air hunger, suffocating, "
        "drowning"
    ),
    C.AIR_HUNGER: (
        "not getting air, not getting enough air, cant get enough air, starved of air, not enough air, lungs wont "
        "fill, air hunger, trouble breathing, difficulty breathing, breathing is difficult, breathing is hard, "
        "breathing is really hard, breathing difficult*, hard to breathe, hard to get a breath, laboured breathing, "
        "labored breathing, struggling to breathe, struggling with my breathing, breathing is bad, breathing has "
        "got worse, cant get air in, breathing very fast, breathing fast, breathing is all over, breathing is "
        "getting, breathing getting worse, breathing is worse, breathing gone funny, struggling with breath, cant "
        "get enough breath, not enough breath, cant fill my lungs, need more air, struggling for breath, struggling "
        "to get my breath, cant get a proper breath, cant get a deep breath, cant get breath in, air wont go, like "
        "breathing through a straw, breathing through a straw, not enough air going, cant get my breathing, get any "
        "air in, get air in, not getting any air, get any air, any air in, no air, air is not coming, breath is not "
        "coming, breath not coming, breath wont come, breathing is not coming, breathing isnt right, fighting for "
        "air, fightin for air"
    ),
    C.BREATHLESS: (
        "breathless*, short of breath, shortness of breath, out of breath, puffed, puffed out, puffing, "
        "winded, short on breath, breath is short, panting, wheez*, for air, out of puff, short winded, "
        "huffing and puffing, lose my breath, losing my breath, no puff, for breath, to catch my breath, "
        "to get my breath, breather, gasping for breath, hardly any breath, runs out of breath, "
        "running out of breath, out of breathe, short of breathe, shortness of breathe, short breath, "
        "breathlessnes, puggled, peched, pechin, blowing hard, blowing like, heavy breathing, "
        "breathing heavy, breathing hard, lose my puff, bit chesty, catch a breath, get my breath back, "
        "sucking in air, cant lie flat, cannot lie flat, cant lie down flat, sleep sitting up, "
        "sleeping upright, sleep upright, sleeping in the chair, need extra pillows, cant lie down without, "
        "breath is going, breath keeps catching, no breath left, breath wont settle, struggling for air"
    ),
    C.BLUE: (
        "gone blue, going blue, turning blue, turned blue, lips are blue, blue lips, lips blue, went blue, gone "
        "grey, going grey, turned grey, lips look .. blue, lips are .. blue, lips .. blue, blue around the lips, "
        "blue round the lips, blue round the mouth, blue around the mouth, fingers .. blue and, lips .. purple, "
        "lips look grey"
    ),
    C.REST: (
        "at rest, resting, sitting, sat, sit, lying, laying, lie, lie down, in bed, doing nothing, "
        "in my chair, armchair, settee, sofa, couch, at night, woke, wakes, wake up, when i sit, "
        "sitting still, without moving, havent moved, not moved, flat, not even moving, sitting down, "
        "just sitting, watching tv, blue"
    ),
    C.TASKS: (
        "stairs, upstairs, staircase, steps, dressing, dressed, getting dressed, housework, hoovering, "
        "vacuuming, than usual, washing, shower, showering, cooking, slightest, easily, few steps, "
        "few yards, just walking, walking to, walk to, walking up, walking round, making tea, "
        "making the bed, making a bed, bed made, kitchen, bathroom, tying my shoes, shoelaces, shopping, "
        "hill, slope, bins, never used to, shops, chores, half way up, to the gate, used to manage, "
        "brushing my teeth, brushing my hair, getting the post, to the loo, to the kitchen, to the car, "
        "to the corner, to the shop, corner shop, letterbox, crossing the room, across the room, "
        "one flight, flight of stairs, changing the sheets, washing up, doing the dishes, ironing, "
        "bending down, socks, than i used to, than before, than last, a few metres, making breakfast, "
        "getting up the, putting my, gardening, carrying, landing, couple of steps, bending, "
        "dress myself, getting washed, get washed, wash, hair, teeth, the bins, hoover, the dog, "
        "walk the dog, walking the dog, school run, bathroom and back, kitchen and back, "
        "from the bed to, bed to the, chair to the, to the bathroom, to the toilet, to the front door, "
        "top of the stairs, up the stairs, top step, up to bed, half a mile, end of the road, "
        "end of the garden, down the path, down the road, cooker, kettle, tea, sweeping, mopping, "
        "ordinary things, simplest things, easy things, slightest thing, hardly anything, "
        "pushing the trolley, trolley, showers, get dressed"
    ),
    C.INHALE: "breathe in, deep breath, breathing in, breathe deep, take a breath, breathe",
    # blood
    C.BLEED: (
        "bleed*, bled, nosebleed*, nose bleed*, blood coming, gushing blood, pouring blood, losing blood, gushing, "
        "pouring with blood, nose wont stop, spurting, haemorrhaging, nose been pouring, nose is pouring, nose "
        "pouring, nose has been pouring, nose is streaming blood, pumping out, blood everywhere, pouring out of my, "
        "squirting out, spurts, soaked with blood, soaked in blood, wont stop bleeding, wont clot"
    ),
    C.BLOOD: (
        "blood, bloody, claret, blood's, bleeding, bleed, bled, red in the pan, red in the toilet, red in the bowl, "
        "load of red, spitting red, red stuff, red water, pink water, red phlegm, rusty phlegm, red sick"
    ),
    C.WOUND: (
        "cut myself, cut my, sliced, slashed, gash, gashed, wound, cut on, deep cut, knife went, caught my leg, "
        "caught my hand, caught my arm, sliced my, opened up my leg, skinned my, ripped my leg"
    ),
    C.NOT_STOPPING: (
        "wont stop, will not stop, doesnt stop, not stopping, isnt stopping, cant stop it, keeps coming, "
        "keeps bleeding, wont clot, wont quit, hasnt stopped, cant stop the, for an hour, "
        "for half an hour, soaked, soaking, pumping, spurting, gushing, pouring, everywhere, "
        "through the, never stops, still coming, cant get it to stop, non stop, just keeps, wont let up, "
        "an hour, half an hour, twenty minutes, 20 minutes, 30 minutes, no matter what, pressing and, "
        "gone through, soaks, soaked through, tea towels, tea towel, towels, towel, bandages, "
        "plaster wont, tissue after tissue, dripping, keeps on, keeps going, kept going, on and on"
    ),
    C.MUCH: (
        "lot, lots, a lot, loads, heavily, heavy, heavy bleeding, badly, bad, quite a lot, so much, "
        "too much, severe*, profuse*, pool of, puddle, from the head, everywhere, all over, massive*, "
        "clots, bright red, head, losing, tons, buckets, gallons, fresh, clot, large, big, soaking"
    ),
    C.HAEMORRHAGE: (
        "haemorrhag*, hemorrhag*, bleeding ulcer, internal bleeding, bleeding out, bleeding to death, losing a lot of "
        "blood, lost a lot of blood, coffee grounds, soaking a pad, soaked a pad, soaking pads, soaked pads, soaking "
        "through pads, pad every, pads every, pads an hour, pad an hour, spurting, squirting blood, blood is pumping, "
        "blood pumping, bright red blood everywhere, blood everywhere, gushing blood, full of blood, vomiting blood, "
        "vomited blood, blood is pouring, blood pouring, pouring blood, blood squirting, gushing out, lost loads of "
        "blood, bleeding like a tap, bleeding like a pig, blood all over, blood running down, wont stop bleeding, "
        "blood clots the size, vein burst, burst vein, varicose vein burst, clear stuff, spitting red for, load of "
        "red, cut through to the bone, to the bone with, toilet .. red, pan .. red, bowl .. red, loo .. red, bleeding "
        "like mad, bleeding like crazy, bleeding buckets, blood wont stop, blood keeps coming, pouring out of me, "
        "gushing out of, soaked the towel, soaked a towel, soaked through the towel, soaked through three, towels "
        "soaked, tea towel soaked, throwing up blood, sicking up blood, sicked up blood, spewing blood, puking blood, "
        "puked blood, coughing blood, coughed up blood, coughing up blood, spitting blood, blood in my sick, blood "
        "when i cough, poo is black, black poo, black as tar, poo like tar, poo is like tar, blood in the toilet, "
        "blood in the loo, blood when i go, blood from my bum, bleeding from my bum, bleeding from my back passage, "
        "bleeding from down below, blood coming out of my, passing blood, passing clots, pad every hour"
    ),
    C.VOMIT: (
        "vomit*, threw up, throwing up, throw up, thrown up, being sick, been sick, was sick, "
        "sicking up, sick up, puke*, puking, spewing, spewed, chucked up, chucking up, brought up, "
        "bringing up, heaving, retching, coughing up, vomitting, chucking, hurling"
    ),
    C.COUGH: "cough*, spit*, spat",
    C.STOOL: (
        "poo, pooed, stool*, poop, bowel motion, bowel movement, motions, the loo, toilet, bottom, back passage, "
        "wee, urine, peeing, pee, bowels, backside, rectum, number two, number twos, poos, my pee, wiped, loo, "
        "toilet bowl, pan, stools, in the pan, down the toilet"
    ),
    C.BLACK: (
        "black, tarry, tar, like tar, coal, tar like, jet black, sticky black, tarmac, treacle, marmite, liquorice, "
        "molasses, ink"
    ),
    # medicines and poisons
    C.OVERDOSE: (
        "i od'd, ive od'd, just od'd, have od'd, od'd on tablets, od'd on pills, od'd on my, "
        "overdos*, poisoned myself, took too many, taken too many, took too much, taken too much of my, double "
        "dosed, doubled up on my, double dose, wrong dose, too many pills, too many tablets, too many painkillers, "
        "too much medication, too much insulin, too much medicine, i od, an od, od on, od with, ive od, took the lot, "
        "took them all, taken them all, swallowed the lot, swallowed them all, took every one, every one in the box, "
        "took all of them, took all my, taken all my, taken the lot, swallowed the whole, emptied the packet, emptied "
        "the bottle, downed the bottle, whole weeks worth, instead of one, took loads of, took a load of, took two "
        "lots, took it twice, taken it twice, took double, taken double, swallowed a load, swallowed loads, took a "
        "bunch, took a handful, a whole bottle, a whole packet, packet of paracetamol, all the pills, all my pills, "
        "all the tablets, all my tablets, taken everything in the cupboard, tablets i had left, double my dose, two "
        "doses, twice my insulin, doubled my insulin, my insulin twice, wrong insulin, too much warfarin, swallowed "
        "all of, swallowed every, swallowed a whole, swallowed a handful, downed them all, downed the lot, necked "
        "them all, necked the lot, ate all my, ate the whole box of pills, too many of my, one too many of my, more "
        "than i should have of my, wrong pills, wrong tablets, wrong meds, wrong medicine, someone elses tablets, "
        "someone elses pills, husbands tablets, wifes tablets, mums tablets, dads tablets, took my tablets twice, "
        "took my pills twice, took my meds twice"
    ),
    C.TOOK: (
        "took, taken, take, taking, had, gave myself, injected, necked, popped, downed, swallow*, given myself, "
        "jabbed, ive had, put in, i took, necking, taken by, injecting, popping, chucked back, knocked back, "
        "polished off, finished off, dosed, had my, scoffed, glugged, drank, drunk"
    ),
    C.SWALLOWED: "swallow*, eaten, ate, drank, drunk, necked, got into, got hold of, gulped, chewed",
    C.TABLETS: (
        "tablet*, pill*, painkiller*, paracetamol, ibuprofen, aspirin, meds, medicine*, medication*, capsule*, "
        "warfarin, thinners, beta blocker*, bisoprolol, sleeping tablets, sleepers, dose, tramadol, codeine, "
        "morphine, antidepressant*, digoxin, metformin, blister pack, ramipril, lisinopril, enalapril, amlodipin*, "
        "furosemid*, metformin*, warfarin*, apixaban*, rivaroxaban*, zopiclon*, diazepam*, lorazepam*, oxycod*, "
        "oxycont*, pregabalin*, gabapentin*, sertralin*, quetiapin*, simvastatin*, atorvastatin*, *prolol*, "
        "bisoprolol*, atenolol*, digoxin*, zolpidem*, amitriptylin*, mirtazapin*, citalopram*, codein*, tramadol*, "
        "tabs, sleeping pills, heart pills, water tablets, heart tablets, blood pressure pills, doses, statins, "
        "strip, pack of paracetamol, cocodamol, co codamol, naproxen, tramadols, box of, blisters, warfarins, "
        "beta blockers, antibiotics, night nurse, bottle of, whole packet, whole bottle, blister, packet of, "
        "dosette*, dosset*, pill box, pillbox, pill organiser, pill organizer, nomad tray, weekly box, blister packs"
    ),
    C.INSULIN: (
        "insulin, novorapid, lantus, "
        "humalog, fiasp, toujeo, tresiba, levemir, abasaglar, basal, bolus, fast acting, long acting, units .. "
        "injected, injected .. units, jabbed .. units, units .. instead of, gave myself .. units, dialled up"
    ),
    C.TOO_MUCH: (
        "too many, too much, all my, all of my, all of the, whole strip, whole pack, whole packet, whole box, whole "
        "bottle, the whole, entire, twice, twice over, double, doubled, two lots, second lot, second dose, by "
        "mistake, by accident, wrong, instead of, should have been, should of been, shouldve been, overdid, "
        "handful, a load of, loads of, bottle of, box of, strip of, packet of, three times, ten times, supposed to "
        "be, supposed to take, meant to take, extra, all at once, the lot, mixed up, forgot i already, forgot i "
        "had, forgotten id, already taken, already had, again by mistake, second time, times the dose, four times, "
        "five times, over the limit, far too many, a whole, mixed up my, every last, remaining, rest of the, all in "
        "one go, in one go, week's worth, weeks worth, doubled up, accidentally, accident, twelve, ten, twenty, "
        "thirty, forty, fifty, dozen, more than i should, overdone, mistakenly, mistook, muddled, wrong ones, "
        "someone elses, husbands, wifes, dogs, morning and evening ones together, both lots, a whole weeks, whole "
        "days, entire pack, entire box, a bottle of, one after another, kept taking, cant remember how many, lost "
        "count, lost track, loads, too often, 40 units, 50 units, 60 units, not my, instead, more than, full whack, "
        "the packet, half of them are gone, half of them gone, tons of, lots of, a bunch of, heaps of, handfuls of, "
        "a ton of, way too many, "
        "whole week, whole weeks, in one time, one time, all seven days, entire week, weeks worth of, every "
        "compartment, whole tray, the week's"
    ),
    C.POISON: (
        "bleach, antifreeze, weedkiller, detergent, drain cleaner, disinfectant, cleaning fluid, "
        "white spirit, dishwasher tablet, poison, caustic, cleaning stuff, cleaning product, washing liquid, "
        "washing up liquid, methylated, petrol, turps, oven cleaner, toilet cleaner, rat poison, "
        "slug pellets"
    ),
    # despair
    C.KILL_SELF: (
        "wanna kms, gonna kms, want to kms, going to kms, will kms, kms tonight, should kms, just kms, "
        "kill .. myself, kill herself, kill himself, kill themselves, killing myself, killing herself, end my life, "
        "ending my life, end my own life, end her life, end his life, end it all, ending it all, take my life, take "
        "my own life, taking my own life, hang myself, hanging myself, drown myself, jump off the, jump in front of, "
        "throw myself, suicide, suicidal, hurt myself, hurting myself, harm myself, harming myself, do away with "
        "myself, top myself, topping myself, finish myself off, off myself, shoot myself, unalive, do something "
        "stupid, do myself in, doing myself in, hurt herself, hurt himself, hang herself, hang himself, jump off, end "
        "things tonight, ending things tonight, end everything, going to jump, overdose tonight, walk into traffic, "
        "drive into a wall, drive off, jump from, cut my throat, put an end to my life, put an end to it all, kms, "
        "kys, ctb, end myself, off meself, kill meself, killin myself, cut my wrists, slit my wrists, jump under, "
        "step in front of, not going to see the morning, gas myself, overdose on purpose, jumping off the, jumping in "
        "front, throwing myself, throw myself off, go under a train, crash the car on purpose, crash my car on "
        "purpose, drive into a tree, hanging meself, wish someone would kill me, ready to end, end this life, end it "
        "right now, drown meself, gonna jump, about to jump, ready to jump, jump in front, throw myself under, go "
        "under the train, rope round my neck, noose round my neck, belt round my neck, gun to my head, knife to my, "
        "blade to my, finish myself, ending myself, end me, take myself out, not planning to be around, wont be "
        "around much longer, not going to be here tomorrow, topping meself, top meself, doing myself, killing meself, "
        "kill my self, killing my self, killmyself"
    ),
    C.CUT_SELF: (
        "cut myself on purpose, cut myself .. on purpose, cut my wrists, cutting my wrists, "
        "slit my wrists, slashed my wrists, cutting myself, self harm*, selfharm*, "
        "cut my arms .. on purpose, burned myself on purpose, burnt myself on purpose, cut myself again, "
        "hurt myself on purpose, slashed my arms, cut my arm with, cut my arms, cut my legs, "
        "cut my thigh, slit my, took a blade to, blade to my arm, razor to my, burning myself with, "
        "hitting myself"
    ),
    C.END_IT: (
        "end it, ending it, it ends, its all over, going to end it, be over, wont be here, "
        "wont be around, not be here, be gone, going to do it, finish it, say goodbye, do it"
    ),
    C.TONIGHT: ("tonight, today, now, tomorrow, this time, this evening, by morning, right now, in the morning"),
    C.FAREWELL: (
        "goodbye letter*, suicide note, written a note, written my note, farewell letter, goodbye note, said my "
        "goodbyes, written my goodbyes, letters to the kids, left a note, note for the kids, written letters to, "
        "around after tonight, here after tonight, shall not be around, shall not be here, texted me goodbye, sent me "
        "a goodbye, goodbye text, goodbye message, said goodbye to everyone, goodbye everyone, goodbye forever, this "
        "is goodbye, saying my goodbyes, saying goodbye to everyone, last message from me, last time you hear from "
        "me, wont hear from me again, look after the kids when im gone, look after my cat when im gone, sorry for "
        "everything goodbye, when im gone, written my will and, written the letters, ive written the letters, wrote "
        "the letters, letters are written, letters written, tonight is the night goodbye, ive decided goodbye, this "
        "is goodbye everyone, goodbye cruel, goodbye to you all, my last message, suicide text, bye forever, byes "
        "forever, saying bye to everyone, its been nice knowing, tell my kids i love, tell them i love, told everyone "
        "goodbye"
    ),
    C.READY: (
        "ready, saved up, stockpil*, lined up, counted out, laid out, in front of me, beside me, next to me, "
        "stash*, hoarding, here with me, set aside, out on the bed, on the bed, on the table, in my hand, "
        "emptied out, within reach"
    ),
    C.MEANS: (
        "rope, noose, razor, blade, knife, gun, pills, bridge, train tracks, railway, tablets, cliff, "
        "locked in, locked herself, locked himself"
    ),
    C.THOUGHTS: (
        "thinking of, thinking about, think of, think about, thoughts of, thoughts about, thought of, "
        "keep thinking, crosses my mind, crossed my mind, wouldnt do it, wont do it, would never do it, "
        "not going to do it, never act on it, feel like, thoughts, thought about, sometimes i think, "
        "urge to, urges to"
    ),
    C.DEATH_WISH: (
        "want to die, wanna die, wants to die, wish i was dead, wish i were dead, wish i wasnt here, wish i could "
        "die, better off dead, better off without me, everyone would be better off, be better if i was gone, better "
        "off if i was dead, id be better dead, rather be dead, dont want to live, do not want to live, no reason to "
        "live, isnt worth living, not worth living, nothing to live for, no point in living, no point living, "
        "nothing left to live for, cant go on like this, cant go on living, cant go on any more, cant go on "
        "anymore, cant go on, dont want to be here any more, dont want to be here anymore, dont want to be here, "
        "dont want to be alive, dont want to exist, no will to live, dont want to wake up, not wake up, never wake "
        "up, wish i wouldnt wake up, go to sleep and not wake up, tired of living, want it to end, want it all to "
        "stop, want it to be over, done with life, life is not worth, sick of living, had enough of life, ready to "
        "die, lost the will to live, dont see the point in living, wish i had never been born, dead inside, ideas "
        "of death, death wish, wish i could just disappear, want to disappear, rather not be alive, rather not be "
        "here, not want to be here, wish it was all over for me, dont want to carry on living, dont want to go on "
        "living, dont want to keep living, wish i didnt exist, wouldnt mind if i died, if i died nobody, wish i "
        "would die, hope i die, hope i dont wake, never to wake, would be easier if i wasnt here, be easier if i "
        "was gone, if i wasnt around, better without me, life isnt worth, no longer want to live, tired of being "
        "alive, fed up of living, dont feel like living, id be better off not here, better if i wasnt here, better "
        "if i wasnt around, not be around any more, dont wanna be here, dont wanna live, dont want to carry on, "
        "dont want to go on, cant face living, cant see myself living, sleep forever, go to sleep forever, never "
        "wake, wouldnt care if i died, want out of this life, world would be better without, family would be better "
        "off, kids would be better off, everyones better off, better off without, want to be dead, wish i could not "
        "wake, dont want to do this life, hate being alive, hate my life and want, sleep and never, be with my "
        "late, better if i werent here, no one would care if i, want the pain to end, cant live like this, cant "
        "live with this, dont want 2 live, dont wanna be alive, dont wanna exist, dont want to wake, done living, "
        "over being alive, sick of being alive, dont see a reason to live, dont feel like being alive, praying i "
        "wont wake, pray i dont wake, wish it would all end, wish it was over, want out for good, rather die, "
        "sooner be dead, not be here, wish i wasnt alive, rather not wake up, dont want to see tomorrow, dont want "
        "to see the morning, hope i go in my sleep, like to go to sleep and not"
    ),
    C.HOPELESS: (
        "whats the point of any, whats the point anymore, what is the point, no point in anything, no point "
        "anymore, no point any more, whats the use, hopeless, no hope, lost all hope, lost hope, given up hope, "
        "nothing ever gets better, never going to get better, never get better, nothing will ever, nothings ever "
        "going to, ive given up, given up on myself, given up on life, given up tbh, no way forward, no way out, no "
        "future, cant see a future, cant see a way, no light at the end, i give up on everything, cant see any way, "
        "everything is pointless, its all pointless, life is pointless, feel worthless, im worthless, im a burden, "
        "such a burden, just a burden, nothing matters any more, nothing matters anymore, dark place, despair, in "
        "despair, rock bottom, cant cope any more, cant cope anymore, cant take any more, cant take it any more, "
        "cant take this anymore, cant see the point, see no way out, see no future, nothing left, nothing to look "
        "forward to, nothing to hope for, cant do this any more, cant do this anymore, cant see it getting better, "
        "wont ever get better, not going to get better, beyond help, useless to everyone, waste of space, im a "
        "waste of space, im a failure, total failure, why bother, why do i even bother, dont see the point, see any "
        "point, no reason to carry on, no reason to go on, empty inside, feel so empty, life has no meaning, no "
        "meaning to anything, giving up on everything, im done with everything, everything feels pointless, all "
        "feels pointless, all feels hopeless, no point carrying on, no point trying, not worth it any more, not "
        "worth it anymore, everything is hopeless, its all hopeless, feel hopeless, lifes not, no joy in anything, "
        "cant go through another, stopped caring about anything, no reason to get up, nothing matters, i dont "
        "matter, no one would miss me, nobody would miss me, nobody cares if i, just existing, no purpose, lost all "
        "purpose, cant see a reason, see no reason, beaten, im beat by it all, cant be fixed, no good to anyone, "
        "ruined everything, end of my tether, end of the road, no point in carrying on, no point going on, no point "
        "in going on, no point living like, nobody would notice, nobody would care, no one would notice, no one "
        "cares if, ive had enough of everything, had enough of it all, cant take it, cant face another, cant face "
        "tomorrow, whats left for me, nothing to live, in the way of everyone, just in everyones way, cant see any "
        "point, cannot see any point, dont see any point, cant see any point in carrying on, whats the point of me, "
        "whats the point of living, whats the point in living, whats the point in me, whats the point in going on, "
        "whats the point of going on, point in carrying on, whats the point of carrying on, no use to anybody, no "
        "use to anyone, cant see the point of me, nothing to get up for, no reason to get out of bed, just want to "
        "give up, want to give up on everything, cant cope with life, cant cope with living"
    ),
    # eating
    C.EATING: (
        "been purging, i purge, i purged, purge after, purging after, been bingeing, binge and, binges, binge eating, "
        "starving myself, starve myself, make .. myself sick, making .. myself sick, made .. myself sick, make myself "
        "vomit, made myself vomit, make myself throw up, made myself throw up, making myself throw up, making myself "
        "vomit, purging, purge, purged, laxative*, binge*, bingeing, binging, afraid to eat, scared to eat, scared of "
        "eating, hate my body, hate how i look, only think about my weight, only think about food, obsessed with my "
        "weight, obsessed with food, anorexi*, bulimi*, eating disorder, weight is all i think, hardly eat, barely "
        "eat, hardly eating, barely eating, weigh myself all day, food is all i think, cant stop weighing, cant stop "
        "thinking about food, cant stop thinking about my weight, dont let myself eat, cant stop eating, fingers down "
        "my throat, finger down my throat, skipping meals so, water tablets to lose, fasting so the scales, water "
        "fasting, stopped eating, not eating so, eat nothing, disgusted with my body, disgusting and fat, punish "
        "myself, chew and spit, diet pills, scared what the scales, scared of the scales, terrified of the scales, "
        "weighing myself ten times, calories a day, nothing but water, nothing but coffee, living on coffee, living "
        "on black coffee, living on water, burn off what, dont deserve to eat, dont deserve food, ate everything in, "
        "ate the whole fridge, ate the whole lot and, ate until i was sick, eat in secret, eating in secret, hide "
        "food, hiding food, cant stop "
        "stuffing, stuffing my face until, terrified of gaining, terrified of putting on weight, scared of gaining, "
        "scared of putting on weight, afraid of gaining, disgusted with myself after eating, feel disgusting after "
        "eating, weigh myself every hour, weighing myself every hour, weigh myself twenty, weigh myself ten times, "
        "weighing myself constantly, exercise to burn off, run to burn off, spat my food, chewing and spitting, "
        "restricting my food, restricting food, cutting out all food, starving so, skipped all my meals, skipping all "
        "my meals, food rules, lost control with food, cant stop bingeing, hate myself for eating, bring my food up, "
        "bringing my food back up, bring it back up, throwing up my, sick on purpose, only eating, living off, eat "
        "nothing all, throwing my food away, throw my food away, flush my food, feed my dinner to, fed my dinner to, "
        "pretend ive eaten, pretending to eat, lie about eating, count every calorie, counting every calorie, every "
        "calorie, under 500, 500 calories, 300 calories, 600 calories, 800 calories, earn my food, earn my meals, "
        "walk it off after every meal, hours of exercise after, cant keep anything down on purpose, chucking my food "
        "up, puke after, puking after, puke up my, being sick after meals, toilet after every meal, scoffed "
        "everything, eaten everything in the house, cant stop eating then, hate my fat, hate my stomach, so fat i "
        "cant, fat and disgusting, feel fat and disgusting, repulsed by my body, ashamed of my body, ashamed to eat, "
        "frightened of food, frightened to eat, scared of food, starved myself, starved all day, starving all day, "
        "dont eat on weigh, wont eat until, not letting myself, refuse to eat, refusing to eat, terrified of eating, "
        "chewing gum, hair coming out in clumps, hair falling out in clumps, only water for, on water only, just "
        "water for, water only for, black coffee and, throw up everything, chuck up everything, bring up everything, "
        "fingers down, cant make myself eat, cant let myself eat, throw up after, not eaten for days, stopped eating "
        "so, fast until, fasting until, wont let myself eat, weigh less than, eat then throw, eat and then throw, "
        "hate food, sick after every meal, sick after eating so, 300 a day, let myself have, makes me fat, make me "
        "fat, making me fat, stopped my insulin, two fingers after, get rid of it after, i get rid of it, hair "
        "falling out, no periods, want to be thin, wanna be thin, want to be skinny, wanna be skinny, want to "
        "disappear weight, black coffee and nothing, nothing since sunday because, im disgusting, im so disgusting, "
        "fat pig, fat cow, fat disgusting, hate the way i look, hate what i see in the mirror, cant look in the "
        "mirror, throwing up what, throw up what i, sick up what, make myself throw, made myself throw, make meself "
        "sick, made meself sick, fingers down me throat, laxies, lax tablets, water pills to lose, starve till, "
        "starving till, starve until, not allowed to eat, dont allow myself, not letting myself eat, punishing myself "
        "by, exercise off every, burn off every"
    ),
    C.ON_PURPOSE: (
        "on purpose, deliberately, myself, to lose weight, so the weight, so i dont gain, "
        "so i wouldnt gain, fingers, to get rid of"
    ),
    C.MEAL: (
        "after tea, after meals, after eating, after every meal, after dinner, after i eat, after lunch, "
        "after food, after supper, after breakfast, my dinner, my tea, meals"
    ),
    C.NOT_EATEN: (
        "havent eaten, have not eaten, not eaten, not eating, hasnt eaten, nothing to eat, "
        "eaten nothing, no food, havent had any food, skipped every meal, not had anything to eat, "
        "havent touched food, not eaten a thing, had nothing to eat, havent let myself eat, no meals, "
        "gone without food, without food, without eating, only had water, only water, nothing but"
    ),
    C.FOR_DAYS: (
        "for days, in days, days, since, sunday, monday, tuesday, wednesday, thursday, friday, saturday, this week, "
        "all week, scales, weigh in, weighed, to lose, weigh, two days, three days, four days, 2 days, 3 days, "
        "4 days, yesterday, weekend, number on the scale, the number, week, last week, the other day, last month, "
        "the other week, this month, this year, since summer"
    ),
    # swelling
    C.SWOLLEN: (
        "swollen, swelling, swelled, swells, swell, puffy, puffed up, ballooned, blown up, puffed, "
        "bloated, like a balloon, huge, swole, puffing up, ballooning, swole up, coming up like, "
        "blow up, blew up, bloating, swollen up, puff up, bulging, fat lip, tight as a drum, come up, "
        "coming up, balloon, balloons, swelling up, puffy as, fat and, enlarged, doubled, "
        "swelled right up, size of a, tight and shiny, shiny"
    ),
    C.BIGGER: (
        "bigger than, twice the size, fatter than, thicker than, double the size, bigger, fatter, "
        "thicker, shoe wont go on, shoe doesnt fit, cant get my shoe on, cant get my sock"
    ),
    C.HOT_OR_RED: (
        "hot and red, red and hot, hot and sore, hot and painful, red and sore, hot and swollen, hot and tender, warm "
        "and red, red hot, tender and hot, warm and sore, warm and painful, red and warm, red and hot to touch, hot "
        "to touch, hot to the touch, red and tender, throbbing and hot, tender and warm, purple, hard, veins, vein, "
        "discoloured, warm, "
        "hot red, hot n red, red n hot, sore and hard, hard and sore, tender and hard, hard and tender, sore and red, "
        "sore and hot, tender and red, tender and swollen, swollen and tender, sore to touch, sore to the touch, "
        "tender to touch, tender to the touch, sore when i touch, sore when i press, hard lump, painful lump, tender "
        "lump, burning hot, roasting hot, redder than, hotter than, warmer than, angry red, bright red, shiny red, "
        "throbbing and red"
    ),
    C.CLOT: "clot, clots, dvt, thrombosis, blood clot, deep vein",
    C.CLOSING: (
        "closing, closes, closed, closing up, tightening, tight, swelling, cant swallow, seizing up, "
        "constrict*, narrowing, blocked, closing over, cant get anything down, swallow, gone tight, "
        "going tight, lump, swells, seizing, thick, tightening up, getting tight, scratchy and tight, "
        "strangled, restricted, cutting off"
    ),
    C.ALLERGY: (
        "anaphyla*, allergic reaction, allergic shock, epipen, hives all over, come out in hives, throat is closing, "
        "bad reaction to, anaphalactic, anaphylatic, anaphilactic, severe allergy, allergic attack, nut allergy "
        "kicking, epi pen, used my epipen, reacting to, having a reaction, reaction to the, tongue feels too big, "
        "tongue too big, mouth swelling, tongue is huge, tounge is huge, tongue getting fat, tongue is getting fat, "
        "tongue is getting big, tongue swelling, lips swelling, face swelling, swollen shut, voice has gone squeaky, "
        "voice gone squeaky, throat closing up, allergic to and ate, face has blown up, face like a balloon, face has "
        "swollen, face is swelling, throat swelling, throat has swollen, throat is swelling, mouth is swelling, "
        "tongue swollen, tongue has swollen, lips have gone, eyes are swelling shut, hives and, whole body itching, "
        "epi, adrenaline pen, used my pen, throat closing, throats closing, throat tightening, throats tightening, "
        "tongues swelling, tongue is swelling, tongues swollen, lips swelled, lips swollen, lips blowing up, face "
        "swelled, faces swelling, face blowing up, face is blowing up, face like a football, eyes swelling shut, eyes "
        "swollen shut, eyes nearly shut, lips like sausages, tongue like a sausage, come up in hives, coming out in "
        "hives, covered in hives, welts all over, itching everywhere, itchy everywhere, having an allergic, allergic "
        "to nuts and, used my adrenaline, since the sting, since i got stung, after the sting"
    ),
    C.RASH: (
        "hives, rash, welts, itchy all over, itching all over, blotches, blotchy, come up in lumps, "
        "red all over, nettle rash, nettlerash, itch all over, covered in spots, wheals"
    ),
    C.TRIGGER: (
        "stung, sting, bee, wasp, hornet, nuts, peanut*, shellfish, prawns, prawn, shrimp, antibiotic*, "
        "penicillin, amoxicillin, new tablet*, new medicine, new pill*, new medication, injection, "
        "vaccine, jab, ibuprofen, egg, sesame, latex"
    ),
    # exercise
    C.NAUSEA: (
        "nause*, feel sick, feeling sick, felt sick, felt really sick, sick to my stomach, queasy, "
        "bilious, want to be sick, going to be sick, gonna be sick, about to be sick, sick feeling"
    ),
    C.FATIGUE: (
        "unusual fatigue, unusually tired, unusual tiredness, unusually exhausted, suddenly exhausted, "
        "suddenly very tired, sudden exhaustion, suddenly drained, absolutely wiped out, "
        "so exhausted i cant, far more tired than usual, much more tired than usual"
    ),
    C.SHARP: (
        "sharp, twisted, twist, pulled, pull, tore, torn, popped, pop, snapped, snap, gave way, "
        "sprained, sprain, new pain, sudden pain, pinged, ping, twinge*, stabbing, tweaked, cricked, "
        "wrenched, went crack, cracked, ricked, strained, locked up, gave out"
    ),
    C.INJURY: (
        "pulled a muscle, pulled something, torn a muscle, rolled my ankle, put my back out, "
        "twisted my ankle, cramp in my calf, felt something go, something snapped, something popped, "
        "did something to my, done something to my, done my knee, done my back, done my ankle, done my shoulder, "
        "knackered my knee, knackered my ankle, buggered my knee, buggered my ankle, went over on my, gone over on "
        "my, jarred my, popped my"
    ),
    C.EFFORT: (
        "when i did, during, doing, exercise*, walk, walking, stands, sit to stand, test, workout, "
        "training, class, session, wasnt there before, new, since i, after the, stretching, stepping, "
        "climbing, "
        "step test, walk test, chair test, stand test, balance test, band work, resistance band, squats, press ups, "
        "sit ups, star jumps, lunges, circuits, spin class, aerobics, pilates, zumba, parkrun, jog, jogging, run, "
        "running, cycling, swim, swimming, rowing, weights, dumbbells, treadmill, cross trainer, hiit, burpees, plank, "
        "leg day, arm day, push ups, pushups, pull ups, pullups, step ups"
    ),
    # falls, sugar, water
    C.HEAD: "head, temple, forehead, skull, noggin, back of my head, side of my head",
    C.HIT: (
        "hit, banged, bumped, bashed, knocked, smacked, cracked, whacked, clonked, clouted, split open, "
        "landed on, struck, fell on, thumped, smashed, walloped, bonked, gashed"
    ),
    C.HEAD_INJURY: (
        "concuss*, fractured skull, fractured my skull, cracked my skull, blow to the head, bang on the head, bump on "
        "the head, knock on the head, bang to the head, knock to the head, one pupil, pupils are different, pupils "
        "different, pupil is bigger, pupil is massive, pupil bigger, pupil is huge, split my head, head split open, "
        "cracked my head open, pupils, landed on my head, fell on my head, on my head from, head hit the, lump on my "
        "head, egg on my head, gash on my head, gash on my forehead, egg on my forehead, split my forehead, blood "
        "from my ear, clear fluid from my, clear stuff dripping out, clear fluid, water coming out of my ear, head "
        "first, without a helmet, no helmet, lump the size of, head is bleeding, stitches in my head, headache since "
        "i fell, headache since the fall, sick since i fell, sick since the fall"
    ),
    C.THINNERS: (
        "thinners, blood thinners, warfarin, apixaban, rivaroxaban, edoxaban, clopidogrel, anticoagulant*, "
        "blood thinner, blood thinning tablets, blood thinning, dabigatran, eliquis, xarelto, clexane"
    ),
    C.SUGAR: (
        "sugar, sugars, blood sugar, blood sugars, glucose, blood glucose, bm, bms, bg, bgl, dexcom, libre, cgm, "
        "glucometer"
    ),
    C.SUGAR_LOW: (
        "low, too low, dropped, dropping, crashed, crashing, plummet*, tanked, through the floor, way down, "
        "bottomed out"
    ),
    C.HYPO: (
        "having a hypo, "
        "hypo, hypos, hypoglyc*, having a low, diabetic low, insulin shock, diabetic attack, hypoed, "
        "diabetic emergency, gone hypo, hypo coming on, feel hypo, sugar low, "
        "going low, gone low, going hypo, having a hypo, in a hypo, bad hypo, sugar is in my boots, sugars in my "
        "boots, sugars dropped, sugar has dropped, sugar dropped, sugars crashed, sugar crash, sugars crashing, "
        "bloods are low, bloods low, blood sugar is 2, sugar is 2, sugars 2, sugar is 3, reading lo on, says lo, "
        "shows lo, low alarm going, low alarm keeps, libre alarm low, cant get my sugar up, cant get my sugars up, "
        "sugar wont come up, sugars wont come up, jelly babies arent, jelly babies havent, lucozade isnt, lucozade "
        "hasnt, glucose tabs arent"
    ),
    C.INHALER: (
        "inhaler, puffer, ventolin, salbutamol, blue one, nebuliser, nebulizer, reliever, asthma, blue inhaler, "
        "neb, nebs, peak flow, ventalin, salamol, spacer, puffers, inhalers, gtn, gtn spray, nitro, nitro spray, "
        "angina spray, heart spray"
    ),
    C.NO_USE: (
        "not working, isnt working, aint working, isnt helping, not helping, doing nothing, doing nowt, "
        "not touching, isnt touching, no relief, no effect, hasnt helped, not doing anything, useless, "
        "isnt doing anything, doesnt help, doesnt work, makes no difference, wont work, attack, really bad, "
        "very bad, terrible, run out, empty, "
        "through the floor, in the red, red zone, not shifting it, isnt shifting, not touching it, not touching the "
        "sides, no joy, no good, not budging, isnt making a difference, not doing owt, not doing a thing, does "
        "nothing, did nothing, done nothing, hasnt touched, hasnt worked, hasnt done anything, no better after"
    ),
    C.PLAN: "planned, plan, plans, all planned, worked out how",
    C.BRINK: (
        "on the bridge, on a bridge, on the ledge, on a ledge, on the roof, on the edge of the platform, "
        "on the tracks, top of the car park, edge of the cliff, on the railway line, over the railings"
    ),
    C.URINATE: (
        "pee, wee, pass water, pass urine, urinate, go for a wee, piss, have a wee, wee at all, pee at all, "
        "go to the toilet at all, empty my bladder, bladder"
    ),
    C.GROIN: (
        "between my legs, groin, private parts, privates, down below, inner thighs, undercarriage, saddle, inner "
        "legs, round my bum, round my bottom, saddle area, cant feel when i wipe, when i wipe, when wiping, wiping, "
        "round my back passage, around my back passage, seat area, where i sit, where you sit, girl bits, boy bits, "
        "lady bits"
    ),
    C.FAST_RATE: (
        "a hundred and fifty, a hundred and sixty, a hundred and seventy, a hundred and eighty, "
        "two hundred a minute, over a hundred and fifty"
    ),
    C.METER: ("meter, glucometer, bm, libre, dexcom, cgm, sensor, monitor, reader, diabetic, type 1, type one"),
    C.SHAKY: "shak*, trembl*, sweat*, quivering, jittery, clammy, wobbly, shivery",
    # a cry for help
    C.CRY: (
        "sos, mayday, need an ambulance, emergency, send help, get help, ambulance please, ambulance now, need "
        "medical help, need help now, need help urgently, need urgent help, save me, somebody help, someone help, "
        "please help me now, i need a doctor now, help im on the floor, fallen and cant get up, cant get up off the "
        "floor, on the floor and cant get up, stuck on the floor, please come quick, come quickly, please come "
        "quickly, need someone now, need paramedics, get me an ambulance, need a medic, call for help, calling for "
        "help, help help, i need medical help, need urgent medical, i need an ambulance, get a doctor quick, "
        "someone call, somebody call, please call someone, i need to go to hospital now, take me to hospital, take "
        "me to a&e, a and e now, i need hospital, 999 please, 112 please, 911 please, paramedics at mine, "
        "paramedics please, need the paramedics, need a doctor urgently, need an ambulanse, cant reach the phone, "
        "heart attack help, someone help me, somebody help me, help me now, i need help now, i need help bad, come "
        "and help me, ring for an ambulance, send an ambulance, need help asap, need someone to come, need "
        "hospital, going to hospital now, ring the hospital for me, call the hospital for me, can somebody ring the "
        "hospital, pls someone come, someone come im, call somebody, call someone for me, please phone someone, "
        "phone someone please, somebody phone"
    ),
    C.HELP_ME: (
        "help me, help, need help, i need someone, need somebody, somebody please, someone please, "
        "need a doctor, someone help, help us, i need help, i need somebody, can someone come, "
        "can somebody come, come and get me, come help, need a hand now"
    ),
    C.URGENT: (
        "now, right now, quick, quickly, urgent*, hurry, fast, !!, on the floor, alone, on my own, "
        "cant get up, bleeding, here now, feel terrible, feel awful, something is wrong, somethings wrong, "
        "somethings not right, 🚑, 🆘, asap, immediately, fallen, fell, no one here, im alone, "
        "no one else here, nobody here, cant move, cant stand, cant stand up, im stuck, "
        "on the kitchen floor, on the bathroom floor, in trouble, in a bad way, really bad, very bad, "
        "very ill, really ill, im scared, frightened, dont feel right, dont feel well, help now, poorly, "
        "dreadful, badly wrong, terribly wrong, very wrong, seriously wrong, gone wrong, please hurry, "
        "dont know what to do, cant cope"
    ),
    C.CALL: "call, phone, ring, dial, get, send, fetch, need, calling",
    C.AMBULANCE: ("ambulance, ambulence, 999, 911, 112, paramedic*, emergency services, a doctor now, medics"),
    C.DYING: (
        "im dying, i am dying, going to die, gonna die, think im dying, about to die, dying here, "
        "im having a bad turn, feel like im dying, slipping away, feel like im going, think this is it, "
        "im about to go, feel like death is, something terrible is happening, nearly died, almost died, "
        "nearly killed me"
    ),
    # how it is said
    C.NO: (
        "no, not, never, without, don't, didn't, doesn't, haven't, hasn't, hadn't, isn't, aren't, "
        "wasn't, weren't, neither, nor, zero, free of, free from, none of, cannot, can't, ain't, "
        "no more, no longer, not had, dont, didnt, doesnt, havent, hasnt, hadnt, isnt, arent, wasnt, "
        "werent, cant, can not, aint, nowt, nothing, couldnt, wont, hardly any, nope, nil, hardly, "
        "nobody, no one, no need, noone"
    ),
    C.NO_AFTER: (
        "no, none, nope, negative, nil, never, neither, absent, nowt, zero, not at all, none at all, not a bit, not "
        "once, no way, no sign, none thanks, none thank god, none touch wood, none so far, none today, no thanks, "
        "not any more, none whatsoever, nothing like that, none of that"
    ),
    C.BETWEEN: (
        "any, a, an, the, my, of, in, on, have, had, having, feel, felt, feeling, get, got, getting, "
        "been, experienced, experiencing, noticed, sign, signs, symptom, symptoms, more, really, sort, "
        "kind, kinds, am, is, are, was, were, do, does, did, today, so, far, at, all, new, bad, there, "
        "from, ever, even, single, suffer, suffering, kind of, across, other, either, i, me, im, ive, "
        "this week, or anything, trouble with, problem, problems, issues, issue, with, trouble, "
        "thoughts of, thinking of, about, whatsoever, bit, hint, trace, to, be, this time, once, yet, "
        "seen, any of, going, feelings, plans, episodes, spells, wanting, want, sudden, real, slightest, "
        "out, up, for, it, by, and neither, need, needs, drop, drops, spot, speck, hint of, whiff, "
        "twinge, flicker, bout, touch of, any kind, of any, sort of, anyone, here, from me, on my end, "
        "going on, happening, happened, since, days, all day, night, past, past few, lately, recently"
    ),
    C.AND: "and, &",
    C.NOR: "or, nor",
    C.BUT: ("but, however, though, although, except, instead, yet, despite, whereas, apart from, only that"),
    C.CLAUSE: "just, only, because, since, while, then, when, as, unless, cos, coz, so that",
    C.FINE: (
        "fine, ok, okay, good, normal, alright, great, perfect, well, all right, clear, steady, regular, no "
        "problem, healthy, sorted, happy, content, pleased, glad, felt great, feel good, felt good, enjoyed, fab, "
        "proud, like an eagle, like a hawk, like clockwork, like a dream, like a charm, like a young god, like a "
        "baby, sharp as ever, twenty twenty, like a log, like a lamb, like a teenager, great fun, good fun, loved "
        "it, love it, brilliant, fantastic, felt amazing, felt brilliant, lovely, "
        "back to normal, normal quick, as expected, as it should, like it should, nice and, no bother, no bother at "
        "all, no drama, tickety boo, spot on, hunky dory, right as rain, champion, grand, ace, fine and dandy, "
        "working a treat, on the mend, all good, no issues, no complaints, cant complain, no worries, feeling great, "
        "feel great, feeling fab, "
        "plaster on, plaster on it, stuck a plaster on"
    ),
    C.PAST: (
        "after my first, after my second, after my third, after my first child, after the birth of, "
        "last year, last month, years ago, year ago, months ago, month ago, used to, in the past, as a child, long "
        "ago, back then, when i was, history of, last summer, last winter, last spring, last autumn, a while ago, "
        "before my operation, previously, in my youth, once had, ages ago, decades ago, before the operation, 19##, "
        "20##, years back, year back, back in, in the eighties, in the nineties, as a kid, as a teenager, at uni, at "
        "school, years since, when i was young, in my twenties, in my thirties, in my teens, at nineteen, at twenty, "
        "decades, many moons, long gone, long time ago, long since, once upon a time, grew out of, when i was little, "
        "lifetime ago, different life, as a boy, as a girl, as a teen, all sorted, the year before, past history, 09, "
        "98, years, old news, ages back, before my op, childhood, in hospital then, last christmas, in my forties, in "
        "my fifties, as a youngster, as a lad, as a lass, as a baby, as a student, as a nipper, before i met, before "
        "the kids, before kids, when i had my first, having my first, having my daughter, having my son, pregnant "
        "with, carrying my, not since, never since, nothing since, none since, in the army, during covid, in "
        "lockdown, in hospital years, donkeys years, yonks, last century, way back, back when, another lifetime, at "
        "college, at primary school, at sixteen, at eighteen, at thirty, at forty, when i was twenty, got over it, "
        "over it now, long behind me, behind me now, two years ago, that winter, that summer, recovered, at ## i, "
        "aged ##, at age ##, when i was ##, in my service, national service, as a schoolboy, as a schoolgirl, as a "
        "young, when my kids were small, as an apprentice, in the forces, used to faint, used to get, used to have, "
        "weeks ago, week ago i, fortnight ago, couple of months ago, nothing since then, none since then, fine since "
        "then, okay since then, ok since then, not since then, fine ever since, okay ever since, ok ever since, good "
        "since then, last fit i had, was over twenty years ago, "
        "in the spring, in the autumn, in january, in february, "
        "in march, in april, in june, in july, in august, in september, in october, in november, in december, the "
        "summer before last, a few years back, few months back, couple of years back, before i retired, before "
        "retiring, when i was working, when i worked, back in the day, my younger days, younger days"
    ),
    C.NOW: (
        "right now, at this moment, at the moment, as we speak, while i type, this minute, as i type, "
        "this morning, tonight, getting worse, came back, come back, coming back, is back, now my, "
        "now ive, and now, now i, here now, today, cant type, currently, and now im, again today"
    ),
    C.JUST_NOW: (
        "just, minutes ago, mins ago, min ago, minute ago, an hour ago, hour ago, moment ago, "
        "few minutes, five minutes, ten minutes, second ago"
    ),
    C.EARLIER: (
        "earlier, earlier today, this morning, this afternoon, at lunch, at breakfast, since breakfast, since lunch"
    ),
    C.SETTLED: (
        "went away, goes away, gone away, has gone, went off, better now, fine now, ok now, okay now, settled, "
        "eased, it's over, all right now, alright now, disappeared, wore off, cleared, subsided, good now, over "
        "now, has stopped, it went away, has eased, its gone, it has gone, its gone now, all gone, it went, pain "
        "has gone, pain went, is gone, now gone, gone now, gone again, gone by, gone off, gone completely, but "
        "gone, since gone, passed now, has passed, it passed, passed off, passed quickly, soon passed, stopped now, "
        "it stopped, then stopped, but stopped, passed after, gone after, stopped after"
    ),
    C.IMAGINED: (
        "what if, if i, if my, if you, if someone, if it, should i worry, whether, in case, read about, "
        "heard about, what are, what is, is it true, symptoms of, signs of, prevent, avoid, dont think, "
        "do not think, dream*, tell me about, leaflet, article, causes, caused by what, when should, "
        "how do i know, what do i do if, difference between, how would i know, how do you know, "
        "what does, what do, look like, whats the difference, curious, wondering if, can it cause, "
        "scared of, afraid of, worried about, frightened of, terrified of getting, would feel like, "
        "risk of, fear of, does it mean, is it normal, what happens, can you get, can exercise, "
        "could exercise, likely to, "
        "common with, common side effect, side effect of, side effects of, asking generally, in general, what number "
        "counts, what counts as, counts as, considered low, considered high, at what point is it, when is it called, "
        "is it common, how common is, how common are, whats the meaning, what is the meaning of, how many people, do "
        "people, does everyone, can people, could it be that people, "
        "is dizziness"
    ),
    C.OTHERS: (
        "mum, mom, mother, dad, father, husband, wife, son, daughter, friend, neighbour, neighbor, brother, sister, "
        "he, she, they, his, her, their, partner, uncle, aunt, grandmother, grandfather, grandma, grandpa, "
        "colleague, cousin, boyfriend, girlfriend, dog, cat, someone, somebody, people, character, film, movie, tv, "
        "book, nan, granddad, the wife, the husband, missus, hubby, mate, mates, grandson, granddaughter, "
        "grandkid*, neighbours, brother in law, sister in law, mother in law, father in law, nana, niece, nephew, "
        "kid, kids, child, baby, toddler, little one, lad, lass, bloke, woman, man, girl, boy, lodger, flatmate, "
        "roommate, carer, grandchild, stepson, the old man, guy, lady, boss, coworker, fella, other half, twin, in "
        "laws, little boy, little girl, shes, hes, shes gone, my lad, my girl, pal, buddy, stranger, aunty, auntie, "
        "nanny, gran, granny, gramps, teenager, the lodger, a mate, bestie, girlfriend's, a friend, my friend, "
        "tenant, client, customer, cleaner, postman, pensioner, old lady, old man, next door, the chap, chap, "
        "passenger, colleague's, teacher, student, flatmates, in law, stepdad, stepmum, godson, one of them, one "
        "bloke"
    ),
    C.ELSEWHERE: (
        "had, hospital, in hospital, icu, intensive care, at work, passed away, died, dropped dead, funeral, rip, "
        "rest in peace, god rest, doctors there, under the doctors, last week, last month, last year, yesterday, "
        "last night, other day, abroad, ward, over in, recovering, at home now, out of hospital, back home, since "
        "childhood, as a child, years, months, on sunday, on monday, on tuesday, on wednesday, on thursday, on "
        "friday, on saturday, is fine now, doing well, better now, hes fine, shes fine, has epilepsy, gets "
        "treatment, rehab, overseas, spain, scotland, australia, america, ireland, canada, work, office, school, "
        "used to, back in, nan died, hospice, care home, on the news, has had, had been, was in, once had, down the "
        "road, couple of streets, has a heart attack years, years back, care, in a clinic, in rehab, recovering "
        "now, since she was, since he was"
    ),
    C.MINE: "i, my, me, i'm, i've, im, ive, mine, myself, id, ill",
    C.DONT_KNOW: (
        "dont know, i dont know, dunno, what do you mean, what, huh, not sure what, not sure, no idea, dont "
        "understand, dont get it, what question, can i talk to, what is happening, is what, speak to, talk to, idk, "
        "pardon, come again, dont forget, do not forget, dont forget me, no problem, no worries, no prob, no thanks "
        "needed, no rush"
    ),
    C.FILLER: (
        "please, pls, plz, really, so, very, fucking, bloody, just, quite, bit, a bit, still, actually, "
        "sorry, hi, hello, also, totally, completely, absolutely, honestly, even, now, again, suddenly, "
        "proper, dead, well, pretty, rather, somewhat, kinda, sorta, extremely, oh, god, ow, ouch, like, "
        "literally, right, all, to, be, of, my, the, is, are, been, has, have, ive, im"
    ),
}

ANSWERS: dict[Answer, str] = {
    Answer.YES: (
        "yes, yeah, yep, yup, yea, ya, y, aye, right now, now, it is, still going, still going on, "
        "still happening, still there, as we speak, happening now, me now, me, it hasnt stopped, "
        "hasnt stopped, not stopped, wont stop, getting worse, worse, hurry, deffo, definitely, "
        "of course, sure is, sure, for sure, absolutely, correct, affirmative, indeed, it does, i am, "
        "its me, its happening, happening to me, at the moment, currently, this minute, ongoing, "
        "non stop, constantly, yes please, oh yes, it still hurts, still hurts, true, exactly, "
        "obviously, yh, ye, uh huh, mhm, help"
    ),
    Answer.HESITANT: (
        "think so, i think so, a bit, a little, kind of, kinda, sort of, sorta, comes and goes, "
        "i suppose, suppose so, probably, maybe, perhaps, possibly, might be, hard to tell, "
        "not completely gone, not gone completely, not fully gone, not quite gone, not entirely gone, "
        "only mild, prob, still feel it, i guess, guess so, more or less, slightly, somewhat, "
        "on and off, i believe so, could be, not really gone, still a bit, a touch, i reckon, reckon so, "
        "mostly, partly, not as bad, but less, not sure but yes, im not certain, off and on, a wee bit, "
        "some of it, faintly"
    ),
    Answer.NO: (
        "no, nope, naw, nah, no its not, not at the moment, not now, not right now, not at all, it isnt, "
        "its not, n, negative, none, not happening, not really, it is not, im fine, i am fine, no no, "
        "nay, never, no way, im ok, im okay, all good, nothing, no im not, no thanks"
    ),
    Answer.OVER: (
        "its gone, gone now, all gone, gone, it passed, passed, stopped, has stopped, all over, "
        "over and done, done with, that was yesterday, yesterday, not any more, not anymore, no more, "
        "years ago, ago, was earlier, earlier, finished, ended, went away, wore off, over now, its over, "
        "better now, fine now, feel better, settled, eased off, no longer, last night, last week, "
        "last year, fine since, long ago, cleared up, its past, in the past, that was, went off, "
        "subsided, disappeared, back to normal"
    ),
    Answer.OTHER_PERSON: (
        "not me, someone else, somebody else, not for me, its my, her not me, him not me, next to me, "
        "with me here, with him now, with her now, here with me, another person, its a friend, its for, "
        "on behalf of, my wifes, the person next to me, writing for, asking for a friend, its her, "
        "its him, shes here"
    ),
    Answer.NOT_A_SIGN: (
        "joking, joke, only joking, just kidding, kidding, figure of speech, autocorrect, autocorect, "
        "just a saying, a saying, got me wrong, telly, tv, football, film, movie, match, question, "
        "washing machine, misunderstood, misunderstanding, typo, not what i meant, didnt mean, metaphor, "
        "expression, wrong word, spellcheck, predictive text, just asking, only asking, "
        "talking about the, on about, not literally, messing, having a laugh, kidding around, "
        "exaggerat*, book, false alarm, mistake, meant to type, wrong chat, by accident, "
        "nothing to do with me, voice to text, dictation, lyrics, song"
    ),
}
