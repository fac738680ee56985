using InspectLog.Dictation.Hearing;

namespace InspectLog.Dictation.Tests.Hearing;

public sealed class DecodingPlanTests
{
    [Theory]
    [InlineData(0.3, 256)]
    [InlineData(2.5, 256)]
    [InlineData(3, 320)]
    [InlineData(5, 384)]
    [InlineData(5.12, 384)]
    [InlineData(5.2, 512)]
    [InlineData(7, 512)]
    [InlineData(7.68, 512)]
    [InlineData(7.7, 768)]
    [InlineData(15, 1024)]
    [InlineData(20, 1280)]
    [InlineData(23, 1280)]
    [InlineData(23.1, null)]
    [InlineData(28, null)]
    public void Window_fits_the_clip_with_room_for_silence(double seconds, int? context) =>
        Assert.Equal(context, DecodingPlan.For(seconds).AudioContext);

    [Theory]
    [InlineData(1, true)]
    [InlineData(5, false)]
    [InlineData(7, true)]
    [InlineData(28, true)]
    public void Flash_attention_is_used_where_the_window_needs_no_filling(double seconds, bool used) =>
        Assert.Equal(used, DecodingPlan.For(seconds).WithFlashAttention);

    [Fact]
    public void Token_cap_grows_with_the_clip() => Assert.Equal([16, 76], [DecodingPlan.For(0).TokenCap, DecodingPlan.For(5).TokenCap]);
}
