namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>Thinking aloud: broken-off numbers, corrections said afterwards, words that only open or end the talk.</summary>
public sealed class AfterthoughtsTests
{
    [Theory]
    [InlineData("Feed side, it's twelve point, twelve point two.", "supply-voltage 12.2")]
    [InlineData("Secondary is eight point, nine point eight k.", "coil-secondary-resistance 9800")]
    [InlineData("Secondary eight point nine k.", "coil-secondary-resistance 8900")]
    public void A_number_broken_off_at_the_point_is_none(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Lead two is burnt, three I mean.", "lead-condition @3 burnt")]
    [InlineData("Feed thirteen, twelve I mean.", "supply-voltage 12")]
    [InlineData("I replaced lead five. Six, I mean.", "lead-condition @6 replaced")]
    public void A_correction_may_be_said_after_the_right_words(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Lead two is burnt, okay.", "lead-condition @2 burnt")]
    [InlineData("Cap off, right.", "cap-contacts disconnected")]
    [InlineData("Let's look at lead two, okay.", "")]
    [InlineData("Lead two, okay.", "lead-condition @2 good")]
    [InlineData("Checked plug four, okay.", "plug-condition @4 good")]
    public void A_word_that_ends_the_talk_judges_nothing(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Where was I, plug three, sooty.", "plug-condition @3 sooty")]
    [InlineData("It's reading, wait for it, ten point one k on the secondary.", "coil-secondary-resistance 10100")]
    [InlineData("Where was the crack on plug three?", "")]
    public void Known_asides_ask_and_plan_nothing(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Pulled the rotor, tip's worn, top's fine.", "rotor-blade disconnected; rotor-blade worn; rotor-top good")]
    [InlineData("Lead five is the one that's burnt.", "lead-condition @5 burnt")]
    [InlineData("Was eleven, now nine.", "ignition-timing 11; ignition-timing 9; ignition-timing adjusted")]
    public void Short_forms_mean_what_was_spoken_of(string text, string findings) => Assert.Equal(findings, Read.Line(text, text[0] == 'W' ? "ignition-timing" : null));
}
