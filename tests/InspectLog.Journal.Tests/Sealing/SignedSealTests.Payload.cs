using System.Text;
using System.Text.Json.Nodes;
using InspectLog.Journal.Sealing;

namespace InspectLog.Journal.Tests.Sealing;

/// <content>What a seal may say.</content>
public sealed partial class SignedSealTests
{
    [Theory]
    [InlineData("version", "2", "of version 2")]
    [InlineData("count", "0", "counts no entries")]
    [InlineData("count", "4", "list of withheld")]
    [InlineData("count", "10", "not spelled")]
    [InlineData("head", "\"F0\"", "a hash in it is none")]
    [InlineData("time", "\"2026-11-25T10:30:00+01:00\"", "its time is none")]
    [InlineData("vehicle", "\"../marigold\"", "vehicle's id")]
    [InlineData("program", "\"a\\u001b[2J\"", "program's name")]
    [InlineData("withheld", "[[5,7],[2,2]]", "list of withheld")]
    [InlineData("withheld", "[[7,5]]", "list of withheld")]
    [InlineData("withheld", "[[1]]", "list of withheld")]
    [InlineData("withheld", "[null]", "list of withheld")]
    [InlineData("withheld", "[[2,2],[5,6],[7,7]]", "list of withheld")]
    [InlineData("withheld", "null", "members of a seal")]
    [InlineData("earlier", "{\"count\":10,\"head\":\"0000000000000000000000000000000000000000000000000000000000000000\"}", "seal before it")]
    [InlineData("extra", "1", "members of a seal")]
    public void Payload_that_is_not_one_of_a_seal_is_refused_though_the_signature_holds(string member, string value, string reason)
    {
        var payload = JsonNode.Parse(_sealed.Payload.Span)!.AsObject();
        payload[member] = JsonNode.Parse(value);

        var refused = Assert.Throws<FormatException>(() => SignedSeal.Read(
            SomeSeals.Forged(_key, SomeSeals.HeaderOf(_key), Encoding.UTF8.GetBytes(payload.ToJsonString()))));

        Assert.Contains(reason, refused.Message, StringComparison.Ordinal);
    }

    private string Refusal(string header, byte[] payload) =>
        Assert.Throws<FormatException>(() => SignedSeal.Read(SomeSeals.Forged(_key, header, payload))).Message;

    [Fact]
    public void Forged_list_of_withheld_entries_does_not_fill_the_memory()
    {
        var payload = JsonNode.Parse(_sealed.Payload.Span)!.AsObject();
        payload["count"] = 9_000_000_000_000_000;
        payload["withheld"] = JsonNode.Parse("[[1,9000000000000000]]");

        var refused = Assert.Throws<FormatException>(() => SignedSeal.Read(
            SomeSeals.Forged(_key, SomeSeals.HeaderOf(_key), Encoding.UTF8.GetBytes(payload.ToJsonString()))));

        Assert.Contains("more entries than", refused.Message, StringComparison.Ordinal);
    }
}
