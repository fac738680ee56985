using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using InspectLog.Doubts;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Record;

/// <summary>Doubts in the journal: a kind with arguments, and as sentences in what was written before.</summary>
public sealed class DoubtsTests
{
    [Fact]
    public void Every_kind_of_doubt_has_a_name_and_a_sample()
    {
        var kinds = typeof(Doubt).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Doubt)) && !type.IsAbstract).ToList();

        Assert.Equal(kinds.ToHashSet(), Named.Select(kind => kind.DerivedType).ToHashSet());
        Assert.Equal(kinds.ToHashSet(), SomeDoubts.OneOfEach.Select(doubt => doubt.GetType()).ToHashSet());
    }

    [Fact]
    public void Format_page_tells_of_every_kind_of_doubt()
    {
        var page = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "FORMAT.md"));

        Assert.All(Named, kind => Assert.Contains($"`{kind.TypeDiscriminator}`", page, StringComparison.Ordinal));
    }

    [Fact]
    public void Doubts_read_back_as_they_were_written()
    {
        var back = (FindingsProposed?)Read("findings-proposed", 2, JsonNode.Parse(BodyJson.Write(Proposed(SomeDoubts.OneOfEach)))!.ToJsonString());

        Assert.Equal(SomeDoubts.OneOfEach, back!.Findings[0].Doubts);
    }

    [Theory]
    [InlineData("""{"kind":"taken as all","places":6}""", true)]
    [InlineData("""{"kind":"only guessed","places":6}""", false)]
    [InlineData("""{"kind":"taken as all"}""", false)]
    [InlineData("""{"kind":"taken as all","places":6,"mood":"good"}""", false)]
    [InlineData("""{"places":6}""", false)]
    public void Doubt_this_program_does_not_know_makes_an_entry_it_does_not_know(string doubt, bool known)
    {
        var body = JsonNode.Parse(BodyJson.Write(Proposed([])))!;
        body["findings"]![0]!["doubts"] = new JsonArray(JsonNode.Parse(doubt));

        Assert.Equal(known, Read("findings-proposed", 2, body.ToJsonString()) is not null);
    }

    [Theory]
    [InlineData("""{"check":"lead-condition","condition":"chafed","doubt":"said with a doubt","end":9,"kind":"observation","negated":false,"start":0,"words":"x"}""", "said with a doubt")]
    [InlineData("""{"check":"lead-condition","condition":"chafed","end":9,"kind":"observation","negated":false,"start":0,"words":"x"}""", null)]
    public void Finding_with_its_doubt_as_a_sentence_keeps_it_as_worded_then(string finding, string? text)
    {
        var read = (FindingsProposed)Read("findings-proposed", 1, $$"""{"findings":[{{finding}}],"recording":8}""")!;

        Assert.Equal(text is null ? [] : [new AsWorded(text)], Assert.Single(read.Findings).Doubts);
        Assert.Equal("chafed", read.Findings[0].Condition);
    }

    [Theory]
    [InlineData("""{"command":"confirm","doubt":"It was heard faintly.","recording":32}""", "It was heard faintly.")]
    [InlineData("""{"command":"confirm","recording":32}""", null)]
    public void Command_with_its_doubt_as_a_sentence_keeps_it_as_worded_then(string body, string? text) =>
        Assert.Equal(
            new CommandHeard(32, SpokenCommand.Confirm, text is null ? null : new AsWorded(text)),
            Read("command-heard", 1, body));

    private static IEnumerable<JsonDerivedTypeAttribute> Named => typeof(Doubt).GetCustomAttributes<JsonDerivedTypeAttribute>();

    private static FindingsProposed Proposed(IReadOnlyList<Doubt> doubts) =>
        new(8, [new("reading", "lead-resistance", 3, 9000, null, null, null, false, null, "nine k", 0, 6, doubts)]);

    private static EntryBody? Read(string kind, int version, string json)
    {
        using var document = JsonDocument.Parse(json);
        return BodyJson.Read(kind, version, document.RootElement);
    }
}
