using System.Security.Cryptography;
using InspectLog.Dictation.Understanding.Sounds;

namespace InspectLog.Dictation.Tests.Understanding.Sounds;

public sealed class PronouncingDictionaryTests
{
    [Fact]
    public void Embedded_dictionary_is_the_published_file()
    {
        // The SHA-256 of pronunciation/SHA256SUMS, taken of the file in Debian's pocketsphinx-en-us 0.8+5prealpha+1-15.
        using var file = typeof(PronouncingDictionary).Assembly.GetManifestResourceStream("cmudict-en-us.dict")!;

        Assert.Equal(
            "9de99dd2a24b63c653c1c30ab39388d05185cae36d0875f15c319b4ad6dc43af",
            Convert.ToHexStringLower(SHA256.HashData(file)));
    }

    // Lines of the published dictionary.
    [Theory]
    [InlineData("weak", "W IY K")]
    [InlineData("three", "TH R IY")]
    [InlineData("'bout", "B AW T")]
    [InlineData("zywicki", "Z IH W IH K IY")]
    public void A_listed_word_sounds_as_listed(string word, string phones) =>
        Assert.Contains(PronouncingDictionary.Shipped.Find(word), said => said.SequenceEqual(Phones.Parse(phones)));

    [Fact]
    public void A_word_with_two_pronunciations_has_both() =>
        Assert.Equal(["L EH D", "L IY D"], PronouncingDictionary.Shipped.Find("lead").Select(said => string.Join(' ', said)));

    [Fact]
    public void A_word_it_does_not_list_has_none() => Assert.Empty(PronouncingDictionary.Shipped.Find("xqzt"));

    [Fact]
    public void Every_pronunciation_is_of_known_phones()
    {
        var dictionary = PronouncingDictionary.Shipped;

        Assert.True(dictionary.Words.Count() > 130_000);
        Assert.All(dictionary.Words.Where(word => !word.Contains('(')), word => Assert.NotEmpty(dictionary.Find(word)));
    }
}
