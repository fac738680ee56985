using System.Text;
using InspectLog.App.Forms;
using InspectLog.App.Hosting;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Web;

/// <summary>Signs that do not show but turn the letters after them round.</summary>
public sealed class TurnedTextTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Name_of_a_refused_file_turns_no_other_words()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var answer = await app.SendPhotosAsync(bench, [("\u202Egpj.\u05D0\u05D1.jpg", "no photo"u8.ToArray())]);

        var page = await answer.Content.ReadAsStringAsync(Stop);
        Assert.Contains("\u2068gpj.\u05D0\u05D1.jpg\u2069: ", page, StringComparison.Ordinal);
        Assert.DoesNotContain("\u202E", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Journal_from_elsewhere_cannot_turn_a_page_round()
    {
        await using var app = await TestApp.StartAsync();
        var id = app.Garage.AddVehicle("Tess Okafor", new VehicleAdded("Mari\u202Egold\u0007", "saloon \u2067of\u009B 1974", null));

        var page = await app.Client.GetStringAsync($"/vehicles/{id}", Stop);

        Assert.Contains("Mari\uFFFDgold\uFFFD", page, StringComparison.Ordinal);
        Assert.DoesNotContain(page, sign => sign is '\u202E' or '\u2067' or '\u0007' or '\u009B');
    }

    [Theory]
    [InlineData("a & b < Ω °", "a &amp; b &lt; Ω °")]
    [InlineData("\u202Aa\u202Cb", "\uFFFDa\uFFFDb")]
    [InlineData("line\nline\ttab", "line\nline\ttab")]
    [InlineData("\u2068name\u2069", "\u2068name\u2069")]
    public void Texts_are_encoded_for_pages(string text, string shown) =>
        Assert.Equal(shown, new PageEncoder().Encode(text).Replace("&#xA;", "\n", StringComparison.Ordinal).Replace("&#x9;", "\t", StringComparison.Ordinal));

    [Theory]
    [InlineData("photo.jpg", "photo.jpg")]
    [InlineData("C:\\pictures\\photo.jpg", "photo.jpg")]
    [InlineData("../../photo.jpg", "photo.jpg")]
    [InlineData("\u202E\u0000", "Photo")]
    [InlineData("größe.jpg", "\u2068größe.jpg\u2069")]
    public void File_names_are_shown_by_themselves(string name, string shown) => Assert.Equal(shown, FileNames.Shown(name));

    [Fact]
    public void Long_file_name_is_cut_between_letters()
    {
        var shown = FileNames.Shown(new string('a', 79) + "😀.jpg");

        Assert.Equal($"\u2068{new string('a', 79)}…\u2069", shown);
        Assert.Equal(shown, Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(shown)));
    }
}
