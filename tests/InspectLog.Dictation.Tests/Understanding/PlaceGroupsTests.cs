using InspectLog.Dictation.Understanding;
using InspectLog.Dictation.Understanding.Events;
using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;

namespace InspectLog.Dictation.Tests.Understanding;

public sealed class PlaceGroupsTests
{
    private static readonly SheetLexicon Lexicon = new(Read.Reader.Sheet, [], SpokenLanguage.English);

    [Theory]
    [InlineData("Leads two and five are burnt", "2,5")]
    [InlineData("Plugs 1, 2 and 4 sooty", "1,2,4")]
    [InlineData("Plugs one to three wet", "1,2,3")]
    [InlineData("Leads three through five", "3,4,5")]
    [InlineData("The first three leads", "1,2,3")]
    [InlineData("The last two plugs", "5,6")]
    [InlineData("Leads from four onwards", "4,5,6")]
    [InlineData("Odd ones are fine", "1,3,5")]
    [InlineData("Every lead is fine", "1,2,3,4,5,6")]
    public void Places_named_together_are_one_group(string text, string places)
    {
        var note = new Note(Lexicon, text, null, new NothingFamiliar());
        var ways = note.Runs.Aggregate(new List<NumberSegment[]> { Array.Empty<NumberSegment>() }, (before, run) => [.. before.SelectMany(_ => run.Options, (one, option) => one.Concat(option).ToArray())]);

        Assert.Contains(ways, way => new PlaceGroups(note).Of(way).Any(group => string.Join(',', PlaceSets.Of(group.Places)) == places));
    }

    private sealed class NothingFamiliar : WordFamiliarity
    {
        public override bool IsFamiliar(int word) => false;
    }
}
