namespace InspectLog.Dictation.Understanding.Words;

/// <summary>The small words of a finding, by what they do. They hold for every sheet; what belongs to one sheet is in
/// the sheet.</summary>
internal static class EverydayWords
{
    public static IEnumerable<(Role Role, string Phrase)> All =>
        Rows.SelectMany(row => row.Phrases.Split('|').Select(phrase => (row.Role, phrase.Trim())));

    private static readonly (Role Role, string Phrases)[] Rows =
    [
        (Role.Filler,
            "a|an|the|this|that|these|those|my|our|its|her|his|your|they|here|old|just|about|exactly|even|flat|"
            + "straight|away|very|really|pretty|approximately|roughly|around|nearly|almost|well|so|um|uh|er|erm|ah|"
            + "eh|hm|hmm|mm hm|yes|yeah|yep|aye|then|please|still|already|only|bit|little|lot|kind|sort|some|too|"
            + "also|as well|at last|finally|again|once more|which|who|okay then|right then|let's see|let me see|"
            + "dry|the right way up|right way up|the right size|the right length|the right type|the right hand|right hand|the right hand side|the right side|with the key on|with the key in|with the key turned|key on|key off|with the key off|with the switch on|switched on|ignition live|with the power on|"
            + "first turn of the key|on the first turn|on the first turn of the key|at the first turn of the key|on the button|first kick|first go|first try|at the first try|on the first try|"
            + "on the first attempt|second time|third time|second go|at the second attempt|at the third attempt|on the second attempt|on the third attempt|second attempt|third attempt|at the second go|on the second go|at the second try|on the second try|second try|after a few tries|after a couple of tries|at the first attempt|in the end|eventually|end to end|"
            + "in series|in line|with the ignition on|ignition on|with ignition on|ignition off|engine off|dead on|"
            + "bang on|right through|right across|right round|on the nose|or thereabouts|or so|give or take|by the look of it|by the looks of it|"
            + "on the meter|on the gauge|according to the meter|if anything|there|up|out|down|together|today|"
            + "respectively|each way|first time|first|next up|last|one more|another|have|having|done|all told|"
            + "in total|both ends|each end|otherwise|though|completely|dry|altogether|fitted|installed|tried a|tried the|i tried a|i tried the|we tried a|we tried the|totally|fully|slightly|badly|heavily|"
            + "clearly|obviously|definitely|certainly|properly|nicely|nice|quite|rather|fairly|somewhat|lightly|"
            + "partly|mostly|a bit|a little|a touch|a tad|in fact|of course|by now|at the moment|at present|currently|"
            + "reading|value|figure|measurement|resistance reading|when hot|when cold|when warm|hot|cold|warm|steady|stable|"
            + "with the engine running|at idle|at tickover|got it|there we go|here we go|"
            + "right at the limit|at the limit|on the limit|right on the limit|just on the limit|inside the limit|"
            + "just inside the limit|within the limit|within limits|over the limit|just over the limit|"
            + "under the limit|near the limit|close to the limit|in spec|within spec|out of spec|on spec|to spec|"
            + "in tolerance|within tolerance|where was i|what do we have|what do we have here|what have we got|what have we got here|what have we here|bit wide|bit tight|bit high|bit low|a bit high|a bit low|a bit narrow|a bit big|a bit small|bit big|bit small|wide|narrow|on the wide side|on the tight side|where were we|where are we|wait for it|would you believe|would you believe it|believe it or not|you know|you know what|otherwise okay|otherwise good|otherwise fine|otherwise ok|otherwise sound|otherwise all right|other than that okay|other than that fine|other than that good|apart from that fine|apart from that okay|apart from that good|with the lights on|with the lights off|with the headlights on|with the headlamps on|with everything on|with everything off|out of tolerance|high|low|on the high side|on the low side|on the edge|"
            + "for now|for the moment|for good measure|this time|so far|just now|this morning|this afternoon|by eye|as expected|as usual|in the end|"
            + "overall|all in all|to be fair|to be honest|i'm afraid|i must say|happy with that|the good news is|the bad news is|the good news is that|"
            + "the bad news is that|good news|bad news|anyway|anyhow|to speak of|at all|whatsoever|no doubt|no question|for sure|next|"
            + "it turns out|i can tell you|as you can see|and that's it|that's it|that's all|"
            + "tower end|plug end|cap end|coil end|distributor end|boot end|at the tower end|at the plug end|at the cap end|at the coil end|"
            + "a good deal|a great deal|a good bit|a good way|a good inch|a good while|"
            + "a whisker|a smidge|a smidgen|a hair|a fraction|bit of|a bit of|a little bit|a little bit of|a lot of|lots of|loads of|plenty of|some|"
            + "straight off|at once|right away|beautifully|a treat|like a dream|like clockwork|no bother|without trouble|without fuss|on its own|"
            + "a bit tight|a bit wide|too high|too low|too wide|too small|in range|within range|by the book|borderline|fat|big|blue|crisp|snappy|sweetly"),
        (Role.Preposition,
            "on|at|of|in|right at|right on|right by|right near|right next to|for|across|from|with|by|near|under|around the|along|against|into|onto|inside|round|"
            + "through the|off|next to|behind|beside|above|below the|over the|towards|per"),
        (Role.Verb,
            "is|are|be|being|been|has|have|had|got|gets|get|getting|it's|that's|there's|there is|there are|"
            + "they're|reads|read|reading of|measures|measured|measuring|shows|show|showed|showing|showing up|gives|gave|giving|"
            + "looks|look|looked|looking|looks like|seems|seem|appears|comes out at|came out at|came in at|comes to|came to|"
            + "comes up as|comes up at|sits|sit|sitting|stands|stand|i've|i've got|i have|i read|i see|i get|i got|i make it|i find|found|"
            + "we have|we've got|registers|indicates|settled at|settles at|settles on|settled on|settling on|settling at|settles out at|steadies at|hovers at|hovers around|hovering at|hovering around|turns out|feels|came up|comes up|come up|"
            + "running at|is at|makes|equals|has gone|have gone|remains|stays|come out|comes out|"
            + "what i have is|call it|i'm reading|i'm seeing|i'm getting|i am getting|we read|we get|checks out at|works out at|"
            + "firing at|fired at|i can get|i could get|can get the|could get the|can get a|could get a|i can see|you can see|we can see|can see|"
            + "meter reads|meter says|meter shows|the meter reads|the meter says|the meter shows|gauge reads|gauge says|gauge shows|turned out|it says|i measured|i've measured|we measured|i measure|is giving|is showing|is reading|is measuring|call it|let's call it|say|lines up|lines up at|line up|lined up|lined up at|lining up|falls on|falls at|falls right on|measured up at|measures up at|ohmed out at|ohmed out|ohms out at|metered at|clocks in at|clocked in at|weighs in at|lands at|landed at|ended up at|ends up at|topped out at|works out to|looks to be|happens to be|is down as"),
        (Role.Was, "before it was|before it read|before adjustment|before adjusting|as found|originally|to begin with|to start with|initially|at first|beforehand|was|were|had been|started at|started out at|started off at|used to read|came as|came in as"),
        (Role.Now, "as left|after adjustment|after adjusting|afterwards|after that|and left at|now|is now|are now|it's now|now it's|now reads|and now|these days"),
        (Role.Person, "i|we|you"),
        (Role.Pronoun, "it|them|that one|this one|those two|these two|she|the pair"),
        (Role.And, "and|plus|as well as|along with|and also|and then"),
        (Role.Or, "or|nor|and no"),
        (Role.But, "but|because|because of|due to|owing to|whereas|while|although|however|yet"),
        (Role.Not,
            "couldn't find any|could not find any|couldn't see any|could not see any|can't find any|can't see any|didn't find any|didn't see any|"
            + "do not see any|did not see any|do not find any|can't find a|can't see a|couldn't find a|couldn't see a|didn't find a|didn't see a|found no|saw no|see no|"
            + "not|no|without|free of|free from|no sign of|no signs of|hasn't|"
            + "haven't|hasn't got|haven't got|no trace of|no evidence of|isn't any|aren't any|not any|lacks|"
            + "no longer|no visible"),
        (Role.DoesNot,
            "does not want to|did not want to|do not want to|couldn't|could not|does not|do not|will not|did not|would not|can not|cannot|refuses to|"
            + "fails to|failed to|refused to"),
        (Role.Does, "does|do|did|will"),
        (Role.Absent, "missing|absent|gone|lost|lost its|lost the|lacking|has lost|have lost"),
        (Role.Bad, "damage|damaged|defect|defective|duff|bad|wrong|incorrect|not right|no good|not good|shot|knackered|faulty|not correct|not OK|not fine|not in order"),
        (Role.Nothing, "nothing|none|nothing at all|nil|dead|no light|no flash|not a thing|nowt|nothing there"),
        (Role.Correct,
            "make it|correction|sorry|i mean|i meant|make that|no make that|no wait|wait|wait no|hang on|hold on|actually|"
            + "or rather|oops|whoops|my mistake|no sorry|sorry no|no it's|that should be|that should read|"
            + "sorry that's|no that's|let me correct that|i tell a lie|tell a lie|no hang on|excuse me|beg your pardon|"
            + "pardon me|no actually|no i mean|sorry i mean|sorry make that|i should say|should i say|no hold on|no not that"),
        (Role.Retract,
            "scratch that|strike that|forget that|cancel that|delete that|ignore that|scrap that|disregard that|"
            + "scratch the last|scratch that last one|forget it|take that back|undo that|wipe that|drop that|"
            + "strike the last|no scratch that|sorry scratch that|that's wrong|that was wrong|not right"),
        (Role.All,
            "all|every|each|every one of|each of|all of|all of the|every single|all round|all around|throughout|"
            + "the lot|everything|the whole set|the full set|each and every|anywhere|everywhere|across the board|the whole lot|right across"),
        (Role.Any, "any|any of|on any of|any one of|a single one of|one of them"),
        (Role.Neither, "none of|none of the|neither|not one of|no one of|not a single"),
        (Role.Both, "both|both of|the two|either"),
        (Role.Rest,
            "everywhere else|elsewhere|the rest|rest|the other ones|the remaining|remaining|everything else|the other three|"
            + "the other four|the other five|the other two|all the rest|the remainder|"
            + "every other one"),
        (Role.Except,
            "except|except for|apart from|other than|bar|save|save for|excluding|with the exception of|barring|not counting|not including|ignoring|leaving out|leaving aside|besides|"
            + "all but|aside from|excepting|minus"),
        (Role.PlaceMark, "number|cylinder|no.|nr|num|cyl|pot|position|hole|numbers"),
        (Role.Goes,
            "goes|go|goes in|goes easily|is easy|easy|goes nicely|just drags|drags nicely|is easy enough|goes through|goes between|fits|fit|passes|passes through|pass|slides|slides in|"
            + "slides through|slips in|slips through|drops in|drops through|enters|will go|will go in|just goes|"
            + "slide|slides between|is a go|does go|gets in|will fit|will pass|clears|is loose in it|went in|went|fitted in|takes|accepts|"
            + "admits|swallows|lets in|snug|is snug|just fits|drags|drag|is a sliding fit|is a nice fit|is a good fit|is a snug fit|is a slide fit|just passes|will take|will accept|slid in|slipped in|passed"),
        (Role.Stops,
            "stops|stop|no go|and no go|no chance|not a chance|won't have it|will not have it|won't look at it|won't go in|will not go in|is a squeeze|will not fit|won't fit|is a no go|jams|sticks|binds|is too tight|too tight|is tight|too thick|is too thick|"
            + "is too big|too big|stuck|is refused|stays out|catches|catch|grabs|blocks|"
            + "refuses|rejects|won't take|will not take|doesn't take|does not take|won't accept|will not accept|won't let in"),
        (Role.To,
            "back to|back up to|back down to|out to|in to|over to|round to|to|through|thru|till|until|up to|down to|until it read|until it reads|till it read|till it reads|until it was|till it was|"
            + "until it showed|until i had|till i had|until i got|till i got|until i saw|until it came to|so it's|so it reads|so it is"),
        (Role.Between, "between|from|anywhere from|anywhere between|somewhere between|in between"),
        (Role.Same, "same|the same|ditto|likewise|same again|same for|same on|same story on|identical|same with|as is|same thing on|same as|so is|so are|so was|so were|so has|so have|so does|so do|as is|as are"),
        (Role.Bound,
            "under|over|below|above|less than|more than|at least|at most|just under|just over|just below|"
            + "just above|a shade under|a shade over|a hair over|a hair under|a little over|a little under|"
            + "a bit over|a bit under|well over|well under|upwards of|short of|north of|south of|and a bit|and a touch|and a smidge|and change|and something|and a tad"),
        (Role.Hedge,
            "i think|i reckon|i believe|i guess|i suppose|probably|seems to be|appears to be|looks like it's|"
            + "looks to be|as far as i can tell|as far as i can see|i'd say|i would say|i'd call|i would call|i'd call it|possibly|if i read it right|i'm fairly sure"),
        (Role.Looked,
            "checked|tested|inspected|examined|looked at|had a look at|went over|been over|been over all|been all over|gone over|been through|gone through|been round|gone round|checking|testing|measured the|"
            + "inspecting|looking at|went round|went through|double checked|verified"),
        (Role.Good,
            "like they should|as they should|like it should|as it should|looks like it should|good|fine|ok|okay|all right|allright|sound|healthy|perfect|serviceable|great|in good order|lovely|"
            + "in good condition|in good shape|in good nick|as it should be|as they should be|no problem|no problems|"
            + "nothing wrong|nothing wrong with|no fault|no faults|no issue|no issues|no damage|undamaged|"
            + "like new|as new|as good as new|not bad|tidy|okay too|excellent|no defects|intact|spot on|"
            + "no trouble|happy with|looks new|good to go|in fine order|in order|right|all correct|undamaged"),
        (Role.New, "new|brand new|a new|fresh|a fresh|replacement|a replacement"),
    ];
}
