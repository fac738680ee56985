namespace InspectLog.Dictation.Understanding.Items;

/// <summary>How far a cue that something is no finding reaches.</summary>
internal enum CueReach
{
    /// <summary>From the cue to the end of its clause, and on over clauses that have no verb of their own.</summary>
    Forward,

    /// <summary>From the cue to the end of its clause: what is then read off counts.</summary>
    Looking,

    /// <summary>The whole clause.</summary>
    Clause,

    /// <summary>The whole clause, and on over what is told of then.</summary>
    Story,

    /// <summary>From the start of the clause to the end of the sentence.</summary>
    Sentence,
}

/// <summary>The phrases by which people speak of what is not found here and now: plans, wishes, limits, other cars,
/// earlier times, hearsay, things not done.</summary>
internal static class NonFindingCues
{
    public static IEnumerable<(CueReach Reach, string Phrase)> All =>
        Rows.SelectMany(row => row.Phrases.Split('|').Select(phrase => (row.Reach, phrase.Trim())));

    /// <summary>Verbs that, at the start of a sentence in their plain form, give an order.</summary>
    public static IReadOnlySet<string> Orders { get; } = Words(
        "replace|clean|adjust|pull|take|fit|swap|order|turn|crank|switch|remove|disconnect|reconnect|unplug|"
        + "make|hold|bring|give|pass|hand|fetch|grab|write|hang|keep|leave|tighten|renew|regap|scrape|change|start|stop|"
        + "buy|call|ring|ask|tell|remind|mind|use|try|move|open|close|lift|drop|wipe|brush|undo|find|"
        + "watch|wait|stand|push|press|play|send|let|go|come|sign|get|book|lend|throw|shut|clear|"
        + "sweep|tidy|roll|lower|raise|wind|charge|fill|drain|paint|weld|imagine|suppose|say|guess|assume|pretend|picture|consider");

    /// <summary>Verbs of looking: at the start of a sentence they order a look, and what follows the comma counts.
    /// </summary>
    public static IReadOnlySet<string> LookOrders { get; } = Words("check|measure|test|look|inspect|examine|see|do|verify");

    /// <summary>Verbs that, before their subject, ask.</summary>
    public static IReadOnlySet<string> Askers { get; } = Words(
        "is|are|was|were|does|do|did|has|have|can|could|would|should|will|shall|"
        + "may|might");

    public static IReadOnlySet<string> QuestionWords { get; } = Words(
        "what|which|where|who|whose|why|how|when|what's|where's|who's|how's|what'd|how'd");

    private static readonly (CueReach Reach, string Phrases)[] Rows =
    [
        (CueReach.Forward,
            "i'll|we'll|you'll|he'll|she'll|they'll|it'll|i will|we will|will|going to|gonna|need|needs|needed|needing|want|wants|"
            + "wanted|would like|i'd like|let's|must|have to|has to|had to|got to|gotta|about to|plan to|planning|the plan is|"
            + "remember to|remind me|don't forget|to be|ought to|time to|could do with|wish|wishing|hope|hoping|hopefully|"
            + "if|unless|in case|might|may|could|would|should|maybe|perhaps|until|as soon as|tomorrow|"
            + "next time|next week|later|after lunch|ordered|ordering|on order|to order|buy|bought|buying|"
            + "trying to|try to|meant to|intend|thinking of|thinking about|due for|due a|ready for|"
            + "to do|worth|asked|wonder|wondering|don't know|do not know|not sure|no idea|can't tell|cannot tell|"
            + "hard to tell|hard to say|can't say|unsure|whether|make sure|be careful|look for|look out for|"
            + "watch for|watch out|check for|looking for|feel for|listen for|beware|expect|expecting|expected|"
            + "before i|before we|once i|once we|once the|once it|once they|once all|when i|when we|after i|after we|suppose|imagine|say it|would have|"
            + "shall|you'd|he'd|she'd|they'd|it'd|i'd rather|i'd better|you'd better|better leave|better get|better take|better check|better not|better have|better be|better put|better do|better change|better replace|better clean|better go|better stop|better wait|better let|better make|better order|better buy|better ring|better call|i'd|we'd|had better|instead of|rather than|"
            + "waiting for|wait for|wait until|waiting on|wait till|for sale|in stock|we stock|stock|on the shelf|on the bench|"
            + "in the drawer|in the box|in the van|quote|quoted|invoice|price|cost|costs|sell|sells|selling|paid|pay|pays|charge|charged|worth it|"
            + "advise|recommend|suggest|suggested|consider|considering|in the catalogue|"
            + "needs doing|wants doing|for example|for instance|pass me|hand me|give me|get me|bring me|fetch me|lend me|show me|tell me"),
        (CueReach.Looking,
            "let me|let me check|let me see|let me look|let me measure|let me test|i'm going to measure|"
            + "i'm going to check|i'm going to test|i am going to measure|i am going to check|going to measure|"
            + "going to check|going to test|going to look|i'll measure|i'll check|i'll test|i'll look|i'll do|i'll try|"
            + "i want to look|i want to check|i want to measure|want to look|want to check|want to measure|"
            + "need to check|need to measure|need to look|need to test|needs checking|needs testing|needs measuring|"
            + "moving on to|on to the|onto the|now for the|next is|next comes|next up is|starting with|start with|"
            + "time to look|time to check|time to measure|ready to measure|ready to check|about to measure|about to check|"
            + "checking|measuring|testing|looking at|working on|let's look|let's check|let's measure|let's see|let's do|let's try"),
        (CueReach.Story,
            "sister engine|sister|at college|test car|training car|demo car|training engine|test engine|test rig|last car|other car|another car|previous car|next car|his car|her car|my car|my own car|your car|their car|"
            + "customer's car|that car|the other one|the last one|the previous one|last one we had|car before|other van|the van|"
            + "my mate's|neighbour's|my brother's|my father's|dad's|my own|sister car|other vehicle|last vehicle|"
            + "on monday|on tuesday|on wednesday|on thursday|on friday|on saturday|on sunday|all the time|always|never|often|"
            + "sometimes|every time|tend to|tends to|yesterday|last week|last month|last year|last time|last service|last summer|last winter|last spring|"
            + "last autumn|last visit|last inspection|last monday|last tuesday|last friday|year ago|years ago|month ago|"
            + "months ago|week ago|weeks ago|day ago|days ago|hour ago|ago|previous owner|previously|before that|"
            + "when it was new|when new|in the old days|the other day|earlier this year|back then|"
            + "years back|months back"),
        (CueReach.Clause,
            "the limit|limits|limit is|the spec|spec is|spec for|spec of|spec on|specs|book value|book values|book figure|book figures|go bad|goes bad|go off with|come gapped|comes gapped|hasn't come|haven't come|hasn't arrived|haven't arrived|hasn't turned up|the wrong one|the wrong ones|come in sets|comes in a set|come in boxes|these i've had|ones i've had|ones i've seen|i've ever|once saw|once had|i once|we once|seen before|specification|specified|the manual|manual says|the book|"
            + "handbook|the data|data sheet|maximum|minimum|max|tolerance|nominal|nominally|supposed|should be|should read|"
            + "should have|should measure|ought|allowed|allowable|permitted|recommended|target|anything over|"
            + "anything under|anything above|anything below|anything between|anything from|anything less|"
            + "anything more|factory|normally|usually|typically|generally|in theory|ideally|acceptable|rated|"
            + "range is|k range|ohm range|volt range|ohms range|volts range|ohm scale|volt scale|the range|meter is on|meter is set|set the meter|"
            + "meter to|zero the meter|zeroed|meter's battery|meter battery|selector|autorange|auto range|"
            + "other engine|another engine|next door|would be|bike|motorbike|lorry|truck|tractor|mower|boat|trailer|caravan|"
            + "says|saying|he said|she said|they said|he says|she says|they say|owner says|owner said|customer says|"
            + "customer said|told me|told us|apparently|according to the owner|owner reckons|he reckons|complains|complained|"
            + "complaint|reported|reports|rumour|the advert|the seller|someone said|somebody said|people say|says the owner|"
            + "haven't measured|haven't checked|haven't tested|haven't looked|haven't done|haven't got to|"
            + "haven't got round|haven't tried|haven't touched|have not measured|have not checked|have not tested|"
            + "not measured|not checked|not tested|not done|not yet|yet to|still to|didn't check|didn't measure|"
            + "didn't test|untested|unchecked|not looked|hasn't been|haven't been|not been|haven't had|"
            + "haven't|did not check|did not measure|skipped|skipping|couldn't|could not|can't get|can't reach|"
            + "with age|with time|over time|sooner or later|eventually|over the years|with use|as they age|as it ages|the one marked|one marked|is labelled|are labelled|labelled with|marked as|marked with|what a|what an|then it won't|then she won't|then it does not|then it doesn't|better than|worse than|difference between|compared with|compared to|same as|like the|similar to|different from|"
            + "on the blue one|on the red one|on the green one|on the white one|on the black one|on the silver one|on the yellow one|on the gray one|"
            + "on his|of his|on their|of their|they changed|they replaced|they fitted|they put|they swapped|they cleaned|they took|they set|"
            + "most of the time|half the time|as a rule|times out of ten|can be|can mean|can also be|is usually|are usually|is often|are often|per year|a year|each year|every year|every day|every week|every month|per day|per hour|an hour|"
            + "such as|as in|means|meaning|called|the name|known as|"
            + "on all of these|on these|all of these have|like these|like this|like that|of this age|of this type|of this sort|of that age|out of the box|out of the packet|from new|"
            + "i remember|reminds me|back in my|back in the day|in my day|the one before|once i|in june|in july|in august|in september|in october|in november|in december|"
            + "in january|in february|in april|since spring|since summer|since winter|since autumn|in spring|in summer|in winter|in autumn|of my|of his|of their|"
            + "according to the|on the job card|on the card|in the photo|in the picture|in the catalogue|stamped|printed|embossed|a foot|per foot|per metre|"
            + "on the phone|on the radio|the weather|outside|in the shop|in the workshop"),
        (CueReach.Sentence, "you get|you have|true or false|spot the fault|in the exam|by the time|before you|once you|when you|if you|until you|after you|as soon as you|do not forget"),
    ];

    private static HashSet<string> Words(string words) => new(words.Split('|'), StringComparer.Ordinal);
}
