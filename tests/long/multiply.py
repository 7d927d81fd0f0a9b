"""Makes a store on SQLite with the evaluations of another, multiplied: multiply.py FEW MANY EVALUATIONS. Each copy is a visit of its own, with its own ids and serial number."""
import hashlib, re, sqlite3, sys, zlib

few, many, wanted = sys.argv[1], sys.argv[2], int(sys.argv[3])
sqlite3.connect(few).execute("VACUUM INTO ?", (many,))
store = sqlite3.connect(many)
store.row_factory = sqlite3.Row
store.execute("PRAGMA journal_mode = OFF")  # 38 KB an evaluation: a journal would double what a million take
templates = store.execute("SELECT * FROM evaluations ORDER BY evaluation_id").fetchall()


def rows_of(table, evaluation_id):
    return store.execute(f"SELECT * FROM {table} WHERE evaluation_id = ?", (evaluation_id,)).fetchall()


def unpacked(value):
    """Text, and bytes as they were before they were packed."""
    return zlib.decompress(value).decode() if isinstance(value, bytes) and value[:1] == b"\x78" else value.decode() if isinstance(value, bytes) else value


def packed(text, like):
    if not isinstance(like, bytes):
        return text
    return zlib.compress(text.encode(), 1) if like[:1] == b"\x78" else text.encode()


class Visit:
    """One stored evaluation with what is stored along with it, ready to be written again under other ids."""

    def __init__(self, evaluation):
        self.ids = re.compile("|".join(map(re.escape, (evaluation["evaluation_id"], evaluation["record_id"], evaluation["serial_number"]))))
        self.old = evaluation["evaluation_id"], evaluation["record_id"], evaluation["serial_number"]
        tables = [("evaluations", [evaluation])] + [(table, rows_of(table, self.old[0])) for table in ("visits", "due_dates")]
        self.rows = [(table, row.keys(), [(value, unpacked(value)) for value in row]) for table, rows in tables for row in rows]

    def copy(self, number):
        new = dict(zip(self.old, (f"01994825-1a00-7000-8001-{number:012x}", f"C-{number:08}", f"T-{number:08}")))
        for table, columns, values in self.rows:
            row = [packed(self.ids.sub(lambda id: new[id[0]], text), value) if isinstance(text, str) else value for value, text in values]
            if table == "evaluations":
                row[columns.index("input_hash")] = hashlib.sha256(row[columns.index("record")]).hexdigest()
            store.execute(f"INSERT INTO {table} ({', '.join(columns)}) VALUES ({', '.join('?' * len(columns))})", row)


visits = [Visit(evaluation) for evaluation in templates]
for number in range(wanted - len(visits)):
    visits[number % len(visits)].copy(number)
store.commit()
store.execute("PRAGMA journal_mode = WAL")
print("archive:", store.execute("SELECT COUNT(*) FROM evaluations").fetchone()[0], "evaluations of", store.execute("SELECT COUNT(DISTINCT serial_number) FROM evaluations").fetchone()[0], "boilers")
