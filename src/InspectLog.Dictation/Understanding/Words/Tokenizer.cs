using System.Globalization;

namespace InspectLog.Dictation.Understanding.Words;

/// <summary>Cuts a text into tokens, whether a person typed it or Whisper wrote it.</summary>
internal sealed class Tokenizer
{
    private readonly string _text;
    private readonly List<Token> _tokens = [];
    private int _at;

    private Tokenizer(string text) => _text = text;

    public static IReadOnlyList<Token> Cut(string text)
    {
        var tokenizer = new Tokenizer(text);
        while (tokenizer._at < text.Length)
        {
            tokenizer.Next();
        }

        return tokenizer._tokens;
    }

    private void Next()
    {
        var c = _text[_at];
        if (char.IsAsciiDigit(c) || c == '.' && OpensDecimal())
        {
            Digits();
        }
        else if (char.IsLetter(c))
        {
            Letters();
        }
        else if (IsApostrophe(c) && char.IsAsciiDigit(Peek(-1)) && Peek(1) is 's' && !char.IsLetterOrDigit(Peek(2)))
        {
            // "Number 2's wet."
            Add(TokenKind.Word, "'s", _at, _at + 2);
            _at += 2;
        }
        else if (SignWords.Fraction(c) is { } fraction)
        {
            Add(TokenKind.Digits, fraction[..1], _at, _at + 1);
            _tokens.Add(new(TokenKind.Digits, fraction[2..], fraction[2..], _at, ++_at, '/', true));
        }
        else if (SignWords.Sign(c) is { } word)
        {
            Add(TokenKind.Word, word, _at, _at + 1);
            _at++;
        }
        else
        {
            Mark(c);
        }
    }

    private char Peek(int ahead) => _at + ahead >= 0 && _at + ahead < _text.Length ? _text[_at + ahead] : '\0';

    private bool OpensDecimal() => char.IsAsciiDigit(Peek(1)) && !char.IsLetterOrDigit(Peek(-1));

    // "9.850", "1.2.3" and "11/4" come out as groups; the number grammar decides what the groups mean together.
    private void Digits()
    {
        var lead = '\0';
        while (true)
        {
            var start = _at;
            if (Peek(0) is '.' or ',' or '/' && char.IsAsciiDigit(Peek(1)) && (lead != '\0' || start == _at))
            {
                lead = Peek(0);
                _at++;
            }

            var digits = _at;
            while (char.IsAsciiDigit(Peek(0)))
            {
                _at++;
            }

            Add(TokenKind.Digits, _text[digits.._at], start, _at, lead);
            if (!(Peek(0) is '.' or ',' or '/' && char.IsAsciiDigit(Peek(1))))
            {
                return;
            }
        }
    }

    private void Letters()
    {
        var start = _at;
        if (Acronyms.At(_text, _at) is var (acronym, end))
        {
            _at = end;
            Add(TokenKind.Word, acronym, start, _at);
            return;
        }

        while (char.IsLetter(Peek(0)) || IsApostrophe(Peek(0)) && char.IsLetter(Peek(1)))
        {
            _at++;
        }

        var word = _text[start.._at].ToLower(CultureInfo.InvariantCulture).Replace('’', '\'');
        if (word is "no" or "nos" && Peek(0) == '.' && DigitFollows())
        {
            word = "number";
            _at++;
        }

        if (Contractions.Parts(word) is var (stem, ending, at))
        {
            Add(TokenKind.Word, stem, start, start + at);
            Add(TokenKind.Word, ending, start + at, _at);
            return;
        }

        Add(TokenKind.Word, SignWords.Symbol(word), start, _at);
    }

    private bool DigitFollows()
    {
        var ahead = 1;
        while (Peek(ahead) == ' ')
        {
            ahead++;
        }

        return char.IsAsciiDigit(Peek(ahead));
    }

    private void Mark(char c)
    {
        var spaced = char.IsWhiteSpace(Peek(-1)) || char.IsWhiteSpace(Peek(1));
        var mark = c switch
        {
            '.' or '?' or '!' or ',' or ';' or ':' => c,
            '…' or '\n' => '.',
            '—' or '(' or ')' or '[' or ']' => ',',
            '-' or '–' when char.IsAsciiDigit(Peek(-1)) && char.IsAsciiDigit(Peek(1)) => '-',
            '-' or '–' or '−' when char.IsAsciiDigit(Peek(1)) || Peek(1) == '.' => '−',
            '-' or '–' when spaced || Peek(1) == '-' => ',',
            _ => '\0',
        };
        if (mark != '\0')
        {
            Add(TokenKind.Mark, mark.ToString(), _at, _at + 1);
        }

        _at++;
    }

    private void Add(TokenKind kind, string text, int start, int end, char lead = '\0')
    {
        var glued = _tokens.Count > 0 && _tokens[^1].End == start;
        var stem = kind == TokenKind.Word ? Stems.Of(text) : text;
        _tokens.Add(new(kind, text, stem, start, end, lead, glued) { Capital = end > start + 1 && char.IsUpper(_text[start]) && char.IsLower(_text[start + 1]) });
    }

    private static bool IsApostrophe(char c) => c is '\'' or '’';
}
