namespace InspectLog.Dictation.Understanding.Texts;

/// <content>Figures.</content>
internal sealed partial class Tokenizer
{
    private sealed partial class Cutting
    {
        // "12,300" is one number; "4, 5" and "9,4" are left as they stand, for the number grammar to decide.
        private void Figures()
        {
            var start = _at;
            var figures = new List<char>();
            Take(figures);
            while (Peek(0) == ',' && figures.Count is > 0 and <= 6 && char.IsAsciiDigit(Peek(1)) && char.IsAsciiDigit(Peek(2)) && char.IsAsciiDigit(Peek(3)) && !char.IsAsciiDigit(Peek(4)))
            {
                _at++;
                Take(figures);
            }

            if (Peek(0) == '.' && char.IsAsciiDigit(Peek(1)))
            {
                figures.Add('.');
                _at++;
                Take(figures);
            }

            Add(TokenKind.Figure, string.Concat(figures), start, _at);
        }

        private void Take(List<char> figures)
        {
            while (char.IsAsciiDigit(Peek(0)))
            {
                figures.Add(text[_at++]);
            }
        }
    }
}
