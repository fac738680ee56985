using InspectLog.Checks;

namespace InspectLog.Dictation.Understanding.Words;

/// <summary>How people say that something was done.</summary>
internal static class ActionWords
{
    public static IEnumerable<(ActionTerm Term, string Phrase)> All =>
        Rows.SelectMany(row => row.Phrases.Split('|').Select(phrase => (row.Term, phrase.Trim())));

    /// <summary>Verbs that are parted from their small word by what they are done to: "pulled the lead off",
    /// "put the cap back".</summary>
    public static IReadOnlyList<(string Verbs, string Particles, string Action)> Parted { get; } =
    [
        ("pulled|took|taken|lifted|slipped|popped|pull|whipped|knocked|slid|prised|taking|pulling|got|had",
            "off|out", PartActions.Disconnected),
        ("put|pushed|plugged|fitted|clipped|pressed|connected|snapped|popped|slid|screwed|bolted|fixed|slipped|went|"
            + "goes|gone|hooked|seated|pressing|putting|pushing|dropped|got|shoved",
            "back|back on|back in|back down|back together|back home|home", PartActions.Reconnected),
        ("pushed|pressed|shoved", "on|on properly|on firmly|on fully|on tight|right on|fully home", PartActions.Reconnected),
        ("scraped|wiped|rubbed|brushed|filed|sanded|blew|washed|polished|scrubbed|buffed",
            "clean|down|up|off|out", PartActions.Cleaned),
        ("gave|given", "a clean|a scrub|a wipe|a brush|a polish|a good clean|a brushing|a good brushing|a good brush|a good scrub|a good wipe|a wipe down|a quick clean|a quick wipe|a quick brush|a quick scrub|a good cleaning|a cleaning|a clean up|a polish up|a rub down|a quick rub|a light clean|a light brush|a proper clean", PartActions.Cleaned),
        ("put|set|got|sorted", "right|straight|the right way round|the right way around|in the right order|in the right places",
            PartActions.Adjusted),
        ("swapped|switched|changed|moved", "back|back over|back again|back where they belong|back to where they belong|back to where they should be",
            PartActions.Adjusted),
        ("swapped|changed|traded|switched", "out|for a new one|for new|for a spare|for a fresh one|for new ones|for another",
            PartActions.Replaced),
    ];

    /// <summary>What the state of a part says was done with it: "the cap is off", "lead six is back on".</summary>
    public static IReadOnlyList<(string Particles, string Action)> States { get; } =
    [
        ("back on|back in|back in place|back|back together|back home|plugged in|plugged back in|clipped on|reattached",
            PartActions.Reconnected),
        ("off|unplugged|out|disconnected|detached", PartActions.Disconnected),
    ];

    private static readonly (ActionTerm Term, string Phrases)[] Rows =
    [
        (new(PartActions.Replaced),
            "fitted two new|fitted three new|fitted four new|fitted five new|fitted six new|fitted eight new|fitted all new|fitted all six new|fitted a full set of new|put in six new|put six new|"
            + "had to replace|had to renew|had to change|replaced|renewed|changed|swapped|swapped out|substituted|changed out|fitted a new|fitted new|put in a new|put a new|put new|"
            + "fitted a replacement|fitted replacement|installed a new|installed new|put on a new|put on new|put in new|"
            + "changed for a new one|swapped for a new one|exchanged|has been replaced|have been replaced|"
            + "i've replaced|i replaced|in went a new|in goes a new|on went a new|on goes a new|in with a new|on with a new|in with the new|on with the new"),
        (new(PartActions.Cleaned),
            "had to clean|cleaned|cleaned up|cleaned off|cleaned out|brushed|wire brushed|wiped|polished|scraped|decoked|"
            + "degreased|dressed|dressed up|took a file to|took a wire brush to|took a brush to|took a cloth to|took some emery to|took emery to|took a rag to|ran a file over|ran a brush over|ran a cloth over|cleaned down|gave it a clean|gave it a scrub|gave it a wipe|sandblasted|blasted|"
            + "has been cleaned|have been cleaned|emeried|filed|sanded|gave them a clean|scrubbed"),
        (new(PartActions.Adjusted),
            "had to adjust|had to reset|had to regap|adjusted|readjusted|reset|re-set|regapped|re-gapped|retimed|re-timed|set|corrected|altered|after turning|after moving|after setting|after adjusting|after resetting|after bending|after tweaking|after regapping|"
            + "sorted|sorted out|put right|uncrossed|swapped back|has been adjusted|have been adjusted|readjusted it|fine tuned|tweaked"),
        (new(PartActions.Adjusted, NeedsValue: true),
            "had to move|had to turn|had to open|had to open up|had to close|had to close up|had to bring|had to bend|had to advance|had to retard|closed|closed up|closed down|opened|opened up|opened out|brought|moved|turned|bent|took|dropped|"
            + "raised|lowered|advanced|retarded|changed|eased|nudged|wound|backed off|gapped|tightened|put|"
            + "increased|reduced|widened|narrowed|shifted|pulled|pushed|knocked|got|squeezed|tapped|bumped|bumped up|swung"),
        (new(PartActions.Disconnected),
            "had to disconnect|had to remove|had to pull|disconnected|unplugged|pulled|lifted|unbolted|withdrew|extracted|dismounted|removed|detached|undid|unclipped|uncoupled|unscrewed|has been removed|taken off|"
            + "took off|pulled off|lifted off|took out|pulled out|taken out|slipped off|unhooked|is disconnected|"
            + "are disconnected|off with the|off with its|off came|off comes|out came|out comes|out with"),
        (new(PartActions.Reconnected),
            "reconnected|refitted|reattached|replugged|put back|put back on|pushed back on|plugged back in|"
            + "back on goes|back on go|back on went|back in goes|back in went|back in go|back goes|back went|back on with|back in with|fitted back|clipped back on|reinstalled|reseated|reassembled|plugged in again|connected again|"
            + "back in place|remounted|replaced back|hooked back up|hooked up again|re-fitted|re-connected"),
    ];
}
