"""English: how people tell that something is amiss; only asked about (`core.language.signs`)."""

from __future__ import annotations

from core.language.concepts import Concept as C

AMISS: dict[C, str] = {
    C.VITAL: (
        "brain, mind, memory, thoughts, eyesight, sight, vision, balance, voice, consciousness, circulation, pupil, "
        "pupils, windpipe, nerves of my face, spine, skull, eyeball, lungs, airways, ribs, ribcage, blood, heart's, "
        "left of everything, words"
    ),
    C.PART: (
        "nose, nostril, nostrils, ear, ears, skin, belly, stomach, tummy, abdomen, gut, guts, neck, arm, arms, leg, "
        "legs, hand, hands, foot, feet, finger, fingers, toe, toes, vein, veins, varicose vein, muscle, muscles, "
        "bladder, kidney, kidneys, testicle*, balls, womb, bump, gums, teeth, mouth, lip, lips, wound, scar, "
        "stitches, side, half of me, body, whole body, bones, hip, knee, shoulder, calf, shin, thigh, rib, jaw, "
        "cheek, eyelid, nail, nails, pee, wee, poo, my back, lower back, backbone"
    ),
    C.AMISS: (
        "burst, bursts, bursting, popped open, split open, ripped open, opened up, vanished, disappeared, "
        "switched off, switches off, went out, gone out, gone dark, gone cold, ice cold, stone cold, "
        "freezing cold and, hanging, hangs, hangs down, dribbl*, drool*, dripping, drips, leaking, leaks, "
        "streaming blood, squirting, squirts, oozing, weeping, pus, foaming, froth*, gone black, turned black, "
        "turning black, jet black, gone blue, turned blue, blue, bluish, gone purple, turned purple, gone white, "
        "gone yellow, turned yellow, yellow, swollen, swelling, swelled, ballooned, ballooning, like a balloon, "
        "bulging, sticking out, bone sticking, bent the wrong, wrong angle, crooked, twisted the wrong, wont move, "
        "doesnt move, not moving, wont work, stopped working, not working, doesnt work, wont do what, "
        "does what it wants, does its own thing, mind of its own, wont listen, doesnt obey, wont obey, "
        "doesnt belong, not mine, wont hold me, wont hold, wont carry, gives way, giving way, gave way, gave out, "
        "buckle*, folding under, collapsing, numb, no feeling, cant feel, dead, deadened, paralys*, paralyz*, "
        "tingling all, pins and needles down, shaking uncontrollably, wont stop shaking, jerking, twitching, "
        "convulsing, spasms, seized up, locked, rigid, rock hard, hard as a board, like a board, stiff as a board, "
        "tearing, ripping, stabbing, exploding, exploded, crushing, crushed, unbearable, agony, excruciating, "
        "screaming, killing, on fire, burning hot, red streak*, red line, red stripe, rotten, smells rotten, "
        "festering, infected, gangrene, burnt, burned, scalded, blistered, cut open, sliced, cut deep, severed, "
        "chopped, falling off, came off, torn off, dislocated, snapped, out of its socket, trapped, stuck in, "
        "sucking in, pulling in, sunken, rolled back, rolling back, fixed, wide open, cant close, wont close, "
        "wont open, wont shut, cloudy, dilated, pinprick, different sizes, bleeding, pouring out, gushing, "
        "running like a tap, soaked in blood, covered in blood"
    ),
    C.ODD: (
        "strange, weird, funny, wrong, not right, isnt right, fuzzy, foggy, fading, fades, failing, slipping away, "
        "slipping, goes, going, gone, gone again, wandering, thick, numb, shutting down, closing down, closing, "
        "shutting, stopped, stopping, stops, whistling, whistles, rattling, rattles, crackling, gurgling, wheezy, "
        "shallow, laboured, labored, noisy, raspy, squeaky, hoarse all of, shrinking, dead, empty, swimming, "
        "whirling, buzzing, roaring, ringing and, pounding, thumping, throbbing, jumbled, scrambled, in bits, "
        "half gone, tighter, tightening, squashed, squeezed, crushed, gripped, stabbed, ripped, torn, split in two, "
        "splitting, bursting, burst"
    ),
    C.AS_IF: (
        "like a, like an, like the, like someone, like somebody, like something, like its, like my, like im, "
        "like ive, like there, like when, feels like, felt like, looks like, as if, as though, same as when, "
        "the way a, it is like, its like, is like, was like, like cotton, like jelly, like lead, like fire, "
        "like ice, like glass, like needles, like sand, like wood, like rubber, like syrup"
    ),
    C.ONSET: (
        "suddenly, all of a sudden, out of nowhere, out of the blue, worse and worse, getting worse, got worse, "
        "far worse, much worse, a lot worse, worse by the, more and more, by the minute, every minute, "
        "again and again, over and over, wont stop, doesnt stop, wont let up, nonstop, non stop, third time, "
        "fourth time, wont ease, in an instant"
    ),
    C.SCENE: (
        "everything, room, the room, world, the world, walls, the walls, ground, the ground, lights, the lights, "
        "it all, the light, the screen, picture, the edges"
    ),
    C.DIM: (
        "black, blacks, dark, dim, dimming, grey, gray, greying, blur, blurs, blurred, blurry, blurring, tilting, "
        "tilts, sideways, upside down, spinning, swaying, moving about, double, doubled, fading, fades, tunnel, "
        "stars, spots, sparkles, sparkly, flickering, flashes, flashing, zigzag*, shimmer*, wavy, missing, milky, "
        "foggy, misty, curtain, shutter, blind, veil, shadow, gone out, went out, going out, switched off, cut out, "
        "vanish*, disappear*, letterbox, keyhole, frosted glass, through water, through gauze, through fog, "
        "under water, underwater, sparks, zigzags, wobbling, melting, swirling, moving, spot, blob, patch"
    ),
    C.DO: (
        "get up, get up again, stand up, stand, get off the, sit up, get out of bed, get out of the bath, "
        "get out of the chair, reach the phone, reach the door, reach the kitchen, get to the phone, "
        "get to the door, get to the kitchen, get to the bathroom, get to the loo, get to the toilet, "
        "make it to the kitchen, make it to the door, make it to the phone, make it to the loo, swallow, "
        "swallow my, keep anything down, keep water down, keep my eyes open, open my eyes, stay awake, keep awake, "
        "stay conscious, hold my head up, move, move my, feel my, feel anything, feel half, control my, "
        "stop shaking, stop shivering, stop trembling, stop vomiting, stop being sick, stop crying, stop the blood, "
        "hold on, get warm, bend my neck, turn my head, turn my neck, open my mouth, open the door, close my mouth, "
        "answer, answer me, be woken, recognise, remember how i, remember getting, remember anything, "
        "remember what happened, hold a pen, hold a cup, hold a spoon, hold a fork, hold my phone, use my, lift my, "
        "walk, walk straight, walk any, take another step, put weight on, put any weight, pee, wee, pass water, "
        "smile, whistle, get words, get a word, finish a sentence, lie down, lie flat, focus, see"
    ),
    C.DREAD: (
        "something is wrong, somethings wrong, something is really wrong, somethings really wrong, "
        "something very wrong, something is very wrong, somethings not right, something isnt right, "
        "something bad is happening, something terrible, something awful, not right at all, really not right, "
        "dont feel right at all, feel very strange, feel so strange, feel really strange, feel really weird, "
        "feel so weird, feel very odd, come over all, came over all, come over funny, taken a turn, took a turn, "
        "funny turn, bad turn, in a bad way, really unwell, very unwell, very ill, seriously ill, really poorly, "
        "very poorly, going downhill, worse by the minute, worse and worse, im going to die, gonna die, "
        "think im dying, im so scared, im scared, so frightened, im frightened, terrified, im panicking, panicking, "
        "in a panic, dont know what to do, please come, someone come, come quick, come quickly, come and get me, "
        "get someone, i need someone, i need a doctor, need a doctor, need to see a doctor now, "
        "take me to hospital, need hospital, should i call, shall i call, do i call, should i ring, "
        "should i go to a and e, a and e, a&e, im slipping, im going again, im off again, going to go again, "
        "about to go, going under, im fading, fading fast, drifting off, drifting in and out, in and out of it, "
        "in and out, out of it, not with it, losing time, lost time, dont remember falling, dont remember getting, "
        "dont remember how, cant remember how, no memory of, so drowsy, very drowsy, getting drowsy, drowsy, "
        "more and more sleepy, getting sleepier, sleepier, barely conscious, half conscious, half unconscious, "
        "delirious, hallucinat*, seeing things, hearing voices, voices tell, voices are telling, teeth chattering, "
        "teeth are chattering, chattering teeth, shivering and, shivering all over, shaking with cold, rigors, "
        "burning up, fever of, high fever, temperature of, soaked in sweat, drenched in sweat, dripping with sweat, "
        "pouring with sweat, sweat pouring, sweat is pouring, sweating buckets, cold and clammy, white as a sheet, "
        "white as a ghost, grey as, gone grey, gone white, deathly pale, blue lips, gone and done something, "
        "done something stupid, done something bad, did something stupid, done something terrible, hurt myself, "
        "hurting myself, harm myself, cut deep, cut too deep, too deep this time, never felt so ill, "
        "never felt like this, never had this, never felt pain like, pain like never, worst pain, unbearable pain, "
        "agony, screaming in pain, crying with pain, doubled up, doubled over, curled up in pain, keel over, "
        "keeling over, keel over again, legs have gone, legs went, legs wont, fall every time, keep going over, "
        "knocked me out, cant stop it, cant take it, cant bear it, cant carry on, cant go on, cant do it anymore, "
        "cant do this anymore, looking down at the, looking at the tracks, looking at the pills, "
        "staring at the pills, standing on the bridge, on the bridge, on the ledge, over the edge, easier if i, "
        "better without me, they would be better, theyd all be better, nobody would notice, no one would notice, "
        "this is it for me, wont be here tomorrow, wont be around tomorrow, no tomorrow, last night on earth, "
        "say goodbye, choking, choked, suffocat*, smothered, gasping, fighting for, struggling for, heart attack, "
        "stroke, sepsis, meningitis, blood poisoning, next thing i know, next i knew, looking at the ceiling, "
        "staring at the ceiling, strangers round me, strangers around me, people round me, people standing over me, "
        "went clean out, clean out, floor comes to meet, floor came up, ground came up, turned to water, "
        "turned to jelly and, down i went, i was down, came over queer, come over queer, all went far away, "
        "went far away, far away, ears ringing, ringing in my ears, ears popping and, through to the bone, "
        "to the bone, down to the bone, skin is coming off, skin coming off, skin peeling off, skin is hanging, "
        "flesh, can see the bone, hair falling out, hair is falling out, baby hasnt kicked, hasnt kicked, "
        "not kicked, ring the hospital, phone the hospital, call the hospital, call the doctor, call a doctor, "
        "call my doctor, ring the doctor, ring my daughter, call my daughter, call my son, ring my son, "
        "somebody ring, someone ring, can somebody ring, can someone ring, can someone call, can somebody call, "
        "tell my family, tell my wife, tell my husband, tell my kids, love you all, sorry for everything, "
        "no way back, theres no point, cant keep living, cant keep going, have a plan, got a plan, pills out, "
        "tablets out, engine running, sat in the car with, pipe on the exhaust, go to sleep and stay, stay asleep, "
        "sleep for good, sleep and never, worked out how, nobody would miss, never had owt like, "
        "never had anything like it, never known anything like, all over body, head to toe, not right in myself, "
        "not myself, going wrong, gone wrong, everything hurts, hurts like hell, hurts so much, so much pain, "
        "in so much pain, awful pain, terrible pain, pain is terrible, pain is unreal, pain wont, worst ive ever, "
        "dying of thirst and, peeing all the time and, fruity breath, breath smells, sunken, listless, "
        "burning fever, cooking, on my last legs, baby hasnt moved, baby isnt kicking, baby not kicking, "
        "hasnt kicked since, pins and needles"
    ),
    C.HELP_ALONE: (
        "help me, help us, help me please, please help me, please help us, someone help me, help me now, "
        "i need help, need help, can someone help me, could someone help me, somebody help, i need someone"
    ),
    C.HAZARD: (
        "carbon monoxide, co alarm, co detector, gas leak, smell gas, smell of gas, gas alarm, fumes, electrocut*, "
        "electric shock, got a shock off, scald*, boiling water, boiling oil, boiling fat, chip pan, acid, bleach, "
        "drain cleaner, antifreeze, weedkiller, rat poison, poisonous, poison, poisoned, toadstool*, "
        "wild mushrooms, snake, adder, bitten by, dog bite, nearly drowned, under water too long, car crash, "
        "car accident, crashed the car, crashed my car, hit by a car, hit by a bike, run over, ran me over, "
        "knocked down by, stabbed, shot me, attacked me, mugged, strangled, he hits me, hits me, beats me, "
        "house on fire, smoke everywhere, heatstroke, heat stroke, sunstroke, hypothermia, frostbite, waters broke, "
        "waters have broken, waters have gone, baby isnt moving, baby hasnt moved, baby stopped moving, ectopic, "
        "dog bit, chainsaw, circular saw, nail gun, fish hook, swallowed a battery, button battery, swallowed a, "
        "adrenaline pen, auto injector, autoinjector, used my pen, jext, emerade, swallowed the, got hold of my"
    ),
    C.FALL: (
        "fell, fallen, falls, came off, come off, fell off, fell down, tumbled, crashed, knocked off, knocked down, "
        "thrown off, thrown from, over the handlebars, slipped off, slipped down, tipped off, landed"
    ),
    C.FALL_FROM: (
        "ladder, stepladder, stairs, down the stairs, roof, horse, bike, bicycle, scooter, motorbike, moped, "
        "helmet, head first, headfirst, tree, balcony, downstairs, concrete, loft, scaffold*, window, wall, "
        "on my back, on my neck, on my head, on my face"
    ),
    C.MEDICINE: (
        "medicine, medicines, medication, meds, dose, doses, dosette, dosset, pillbox, pill box, pill organiser, "
        "patch, patches, painkillers, sleeping pills, sleeping tablets, morphine, oramorph, codeine, tramadol, "
        "methotrexate, digoxin, beta blocker, beta blockers, steroids, paracetamol, ibuprofen, aspirin, warfarin, "
        "blister pack, antidepressants, whole strip, whole packet, whole box, bottle of pills, injection"
    ),
    C.MISUSE: (
        "wrong one, wrong ones, wrong dose, wrong tablets, wrong day, wrong person, mixed up, muddled up, "
        "by mistake, emptied, tipped down, downed, necked, whole week, whole weeks, weeks worth, all seven, "
        "all of them, the lot, somebody elses, someone elses, the dogs, the cats, on top of, washed down, "
        "with vodka, with gin, with whisky, with wine, with alcohol, swapped, extra, too many, too much, "
        "all at once, in one go, double, four times, five times, ten times, kids got, got into, got hold of, "
        "handful, fistful, swallowed, spilled, tipped, whole"
    ),
    C.SENSELESS: (
        "not answering, doesnt answer, wont answer, cant answer, not answering me, cant answer me, not responding, "
        "wont respond, doesnt respond, not reacting, wont wake, doesnt wake, wont wake up, cant wake, not waking, "
        "staring, stares, just stares, glazed, eyes rolled, eyes rolling, gone blue, gone grey, gone white, "
        "foaming, frothing, collapsed, keeled over, limp, floppy, soaked in sweat, sweating, drenched, clutching, "
        "holding his chest, holding her chest, holding his heart, holding her heart, holding his head, "
        "holding her head, white as, grey as, cant speak, cant talk, stopped talking, talking nonsense, "
        "makes no sense, not making sense, confused, doesnt know, doesnt recognise, shaking, twitching, jerking, "
        "swollen, passed out, gasping, whistling, rattling, choking, unconscious, wont stop, out of it, "
        "not himself, not herself, not with it, barely breathing, breathing funny, ribs, face has dropped, "
        "face dropped, burnt, scalded, drunk something, swallowed something, fits, fitting, rigid, turned blue, "
        "turning blue, is blue, gone all grey, turned grey, is grey, on the floor, on the ground, on the deck"
    ),
    C.SKIP: (
        "leaving out, leave out, left out, leaving off, leave off, skipping, skip, skipped, not taking, dont take, "
        "stopped taking, not injecting, dont inject, missing, underdosing, cutting down, cut down, cut back, "
        "taking less, half my, go without"
    ),
    C.DOWN: (
        "drops off, drop off, come off, comes off, weight, lose, lower, thinner, slimmer, skinny, kilos, pounds, "
        "number on the, scales, number down, goes down, to be thin, fall off, falls off, shift"
    ),
    C.LOW_SHOWN: (
        "low, lo, says lo, reads lo, two arrows down, double arrow down, double arrows down, arrow down, "
        "arrows down, straight down, below 3, under 3, too low to read"
    ),
    C.DROWSY: (
        "drowsy, sleepy, sleepier, sleep, drowsier, drowsiness, dopey, cant stay awake, cant keep awake, "
        "keep nodding off, nodding off, out of it, groggy, tired"
    ),
    C.GAS: (
        "carbon monoxide, monoxide, co alarm, co detector, gas alarm, smell gas, smell of gas, gas leak, fumes, "
        "barbecue indoors, charcoal indoors, generator indoors, exhaust, exhaust fumes, blocked flue, "
        "blocked chimney, boiler alarm, smoke alarm, co beeping, monoxide alarm"
    ),
    C.POISONED: (
        "alarm is going, alarm going, alarm went off, going off, beeping, bleeping, we all, all of us, everyone, "
        "everybody, the whole family, headache, headaches, head aches, feel sick, sick, dizzy, sleepy, drowsy, "
        "cherry red, faint, everyones got, everybodys got, thumping head, heads, headachy"
    ),
    C.FEVER: "fever, temperature, feverish, burning up, temp, boiling hot",
    C.RIGOR: (
        "teeth chattering, teeth are chattering, chattering teeth, rigor, rigors, shivering, shaking, shakes, "
        "confused, delirious, not making sense, mottled, blotchy, purple rash, rash that, doesnt fade, wont fade, "
        "stiff neck, cant bear the light, light hurts, breathing fast, racing, hardly peed, not peed, red streak, "
        "red line, red stripe, drowsy, wont wake, hallucinat*, dont know where"
    ),
    C.STREAK: "red streak, red streaks, red line, red lines, red stripe, red track, red tracks",
    C.FEEL: "feel, feel my, felt, sense",
    C.CURTAIN: (
        "curtain, shutter, blind came, blind down, veil, gone out, went out, switched off, switched itself off, "
        "gone black, went black, gone dark, went dark, black out, vanished, disappeared, half of, left half, "
        "right half, missing, misted over, milky, cobwebs, cobweb, soot, grey haze, dimmed"
    ),
}
