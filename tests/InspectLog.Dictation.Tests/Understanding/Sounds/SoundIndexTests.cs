using CsCheck;
using InspectLog.Dictation.Understanding.Sounds;

namespace InspectLog.Dictation.Tests.Understanding.Sounds;

public sealed class SoundIndexTests
{
    // Few different sounds, so that runs are often near to each other.
    private static readonly Gen<Phone[]> Runs = Gen.OneOf(Phone.L, Phone.R, Phone.T, Phone.D, Phone.IY, Phone.IH, Phone.S).Array[1, 9];

    [Fact]
    public void It_finds_what_aligning_with_every_phrase_finds() =>
        Gen.Select(Runs.Array[1, 12], Runs, Gen.Double[0.3, 2]).Sample((phrases, heard, strictness) =>
        {
            List<SoundingPhrase> all = [.. phrases.Select((sounds, i) => new SoundingPhrase($"{i}", [], [sounds]))];
            var expected = all
                .Select(phrase => (phrase.Text, Cost: SoundAlignment.Distance(heard, phrase.Sounds[0], 2)!.Value, Length: Math.Max(heard.Length, phrase.Sounds[0].Length)))
                .Where(one => (one.Cost - SoundThreshold.For(one.Length) * strictness) * one.Length <= 1e-9)
                .ToDictionary(one => one.Text, one => one.Cost);

            var found = new SoundIndex(all).Near([heard], strictness).ToDictionary(match => match.Phrase.Text, match => match.Cost);

            Assert.Equal(expected.Keys.Order(), found.Keys.Order());
            Assert.All(found, one => Assert.Equal(expected[one.Key], one.Value, 1e-9));
        });

    [Fact]
    public void A_phrase_said_in_two_ways_is_found_once_by_the_nearer()
    {
        var phrase = new SoundingPhrase("lead", [], [Phones.Parse("L EH D"), Phones.Parse("L IY D")]);

        Assert.Equal([new SoundMatch(phrase, 0)], new SoundIndex([phrase]).Near([Phones.Parse("L IY D"), Phones.Parse("L EY D")], 1));
    }

    [Fact]
    public void Sounds_of_any_length_are_looked_up_without_fault() =>
        Assert.Empty(new SoundIndex([new("lead", [], [Phones.Parse("L IY D")])]).Near([[], [.. Enumerable.Repeat(Phone.L, 3000)]], 1));
}
