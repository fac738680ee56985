using InspectLog.Inspecting.Words;
using InspectLog.Checks;
using InspectLog.Doubts;

namespace InspectLog.App.Tests.Words;

public sealed class DoubtWordsTests
{
    private static readonly CheckSheet Sheet = BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!;

    [Fact]
    public void Every_kind_of_doubt_has_words_of_its_own()
    {
        var kinds = typeof(Doubt).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Doubt)) && !type.IsAbstract).ToList();

        var words = kinds.Select(kind => DoubtWords.Of([Invented(kind)], Sheet)).ToList();

        Assert.NotEmpty(kinds);
        Assert.All(words, text => Assert.False(string.IsNullOrWhiteSpace(text)));
        Assert.Equal(words.Count, words.Distinct().Count());
    }

    [Fact]
    public void Nothing_in_doubt_is_not_worded() => Assert.Null(DoubtWords.Of([], Sheet));

    [Fact]
    public void Several_doubts_are_told_in_their_order_and_the_same_words_once() =>
        Assert.Equal(
            "said with a doubt; no plug was named",
            DoubtWords.Of([new Hedged(), new PlaceUnnamed("plug-condition", "plug"), new PlaceUnnamed("plug-gap", "plug")], Sheet));

    [Fact]
    public void Unlikely_value_tells_what_is_plausible_in_the_unit_of_the_check()
    {
        var span = Sheet.Find("coil-secondary-resistance")!.Measurand!.Plausible;

        var words = Plain(new OutsidePlausibleSpan("coil-secondary-resistance", 94_000, span.From, span.To));

        Assert.StartsWith("that is an unlikely value for Coil secondary, where ", words, StringComparison.Ordinal);
        Assert.EndsWith(" k\u03a9 is plausible", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_the_sheet_does_not_have_is_named_by_its_id() =>
        Assert.Equal(
            "that is an unlikely value for fuel-pressure; this may be fuel-pressure or Coil secondary",
            DoubtWords.Of([new OutsidePlausibleSpan("fuel-pressure", 9, 1, 2), new EitherCheck("fuel-pressure", "coil-secondary-resistance")], Sheet));

    [Fact]
    public void Words_heard_and_taken_are_quoted()
    {
        Assert.Equal("'nine' and 'k' were not heard clearly", Plain(new HeardUnclearly(["nine", "k"])));
        Assert.Equal("'nine' was not heard clearly", Plain(new HeardUnclearly(["nine"])));
        Assert.Equal("'weeks park' was taken for 'weak spark', which sounds alike", Plain(new TakenFor([new("weeks park", "weak spark")], [])));
        Assert.Equal("'let' was taken for 'lead', but 'left' sounds as near", Plain(new TakenFor([new("let", "lead")], ["left"])));
    }

    [Fact]
    public void Doubt_of_an_old_entry_is_told_as_it_was_worded_then()
    {
        Assert.Equal("said with a doubt; 'k' stands without a number", Plain(new AsWorded("said with a doubt; 'k' stands without a number")));
        Assert.Equal("It was heard faintly.", DoubtWords.OfCommand(new AsWorded("It was heard faintly.")));
    }

    [Fact]
    public void Command_in_doubt_tells_what_was_heard()
    {
        Assert.Equal("It was heard faintly.", DoubtWords.OfCommand(new CommandFaint()));
        Assert.Equal("It was heard as \u201CConfirmed that.\u201D.", DoubtWords.OfCommand(new CommandHeardAs("Confirmed that.")));
    }

    private static string Plain(Doubt doubt) => DoubtWords.Of([doubt], Sheet)!.Replace('\u00a0', ' ');

    private static Doubt Invented(Type kind)
    {
        var constructor = kind.GetConstructors().MaxBy(one => one.GetParameters().Length)!;
        return (Doubt)constructor.Invoke([.. constructor.GetParameters().Select(parameter => Value(parameter.ParameterType, kind.Name))]);
    }

    private static object Value(Type type, string text) =>
        type == typeof(string) ? text
        : type == typeof(int) ? 2
        : type == typeof(double) ? 2.0
        : type == typeof(IReadOnlyList<string>) ? new[] { "x" }
        : new[] { new WordsTaken("x", "y") };
}
