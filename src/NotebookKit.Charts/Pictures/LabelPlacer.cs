namespace NotebookKit.Charts.Pictures;

/// <summary>A rectangle on a picture [px].</summary>
internal readonly record struct LabelBox(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Whether two rectangles share more than an edge.</summary>
    public bool Meets(LabelBox other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    /// <summary>The rectangle with room about it.</summary>
    public LabelBox Grown(double by) => new(Left - by, Top - by, Right + by, Bottom + by);
}

/// <summary>
/// Finds places for labels that lie over no line and over no other label. What is drawn is marked on a grid of single pixels; sums over
/// the grid say in four look-ups whether a rectangle is free.
/// </summary>
internal sealed class LabelPlacer
{
    // Half a line's width and what marking on a grid may be off [px].
    private const double Clear = 2;

    private readonly LabelBox _area;
    private readonly int _columns, _rows;
    private readonly bool[] _inked;
    private readonly List<LabelBox> _boxes = [];
    private int[]? _sums;

    /// <summary>An empty area.</summary>
    /// <param name="area">Where labels may stand.</param>
    public LabelPlacer(LabelBox area)
    {
        _area = area;
        _columns = (int)Math.Ceiling(area.Right - area.Left) + 1;
        _rows = (int)Math.Ceiling(area.Bottom - area.Top) + 1;
        _inked = new bool[_columns * _rows];
    }

    /// <summary>Marks a line through points.</summary>
    public void Ink(IReadOnlyList<(double X, double Y)> line)
    {
        for (var i = 0; i < line.Count; i++) Segment(line[Math.Max(0, i - 1)], line[i]);
        _sums = null;
    }

    /// <summary>Marks a rectangle that no label may lie over.</summary>
    public void Take(LabelBox box) => _boxes.Add(box);

    /// <summary>Whether a rectangle lies inside the area and over nothing.</summary>
    public bool IsFree(LabelBox box)
    {
        const double edge = 0.01;
        if (box.Left < _area.Left - edge || box.Top < _area.Top - edge || box.Right > _area.Right + edge
            || box.Bottom > _area.Bottom + edge) return false;
        foreach (var other in _boxes)
            if (box.Grown(1).Meets(other)) return false;
        return Inked(box.Grown(Clear)) == 0;
    }

    /// <summary>The first free one of possible places, which is taken; none where all lie over something.</summary>
    public LabelBox? Place(IEnumerable<LabelBox> tries)
    {
        foreach (var box in tries)
        {
            if (!IsFree(box)) continue;
            Take(box);
            return box;
        }
        return null;
    }

    private void Segment((double X, double Y) from, (double X, double Y) to)
    {
        if (!Cut(ref from, ref to)) return;
        var steps = Math.Max(1, (int)Math.Ceiling(2 * Math.Max(Math.Abs(to.X - from.X), Math.Abs(to.Y - from.Y))));
        for (var i = 0; i <= steps; i++)
        {
            var (x, y) = (from.X + ((to.X - from.X) * i / steps), from.Y + ((to.Y - from.Y) * i / steps));
            var (column, row) = ((int)Math.Floor(x - _area.Left), (int)Math.Floor(y - _area.Top));
            if (column >= 0 && column < _columns && row >= 0 && row < _rows) _inked[(row * _columns) + column] = true;
        }
    }

    // Liang and Barsky, A new concept and method for line clipping, 1984.
    private bool Cut(ref (double X, double Y) from, ref (double X, double Y) to)
    {
        var (dx, dy, low, high) = (to.X - from.X, to.Y - from.Y, 0.0, 1.0);
        foreach (var (p, q) in new[] { (-dx, from.X - _area.Left), (dx, _area.Right - from.X), (-dy, from.Y - _area.Top),
            (dy, _area.Bottom - from.Y) })
        {
            if (p == 0 && q < 0) return false;
            if (p < 0) low = Math.Max(low, q / p);
            if (p > 0) high = Math.Min(high, q / p);
        }
        if (low > high) return false;
        (from, to) = ((from.X + (low * dx), from.Y + (low * dy)), (from.X + (high * dx), from.Y + (high * dy)));
        return true;
    }

    private int Inked(LabelBox box)
    {
        var sums = _sums ??= Sum();
        var (left, top) = (Column(box.Left, _area.Left, _columns), Column(box.Top, _area.Top, _rows));
        var (right, bottom) = (Column(box.Right + 1, _area.Left, _columns), Column(box.Bottom + 1, _area.Top, _rows));
        return At(right, bottom) - At(left, bottom) - At(right, top) + At(left, top);

        int At(int column, int row) => sums[(row * (_columns + 1)) + column];
        static int Column(double at, double start, int most) => Math.Clamp((int)Math.Floor(at - start), 0, most);
    }

    private int[] Sum()
    {
        var sums = new int[(_columns + 1) * (_rows + 1)];
        for (var row = 0; row < _rows; row++)
        {
            var line = 0;
            for (var column = 0; column < _columns; column++)
            {
                if (_inked[(row * _columns) + column]) line++;
                sums[((row + 1) * (_columns + 1)) + column + 1] = sums[(row * (_columns + 1)) + column + 1] + line;
            }
        }
        return sums;
    }
}
