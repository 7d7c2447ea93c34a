#include "indexer/store/consent_table.h"

#include <map>

#include "indexer/store/some_records.h"
#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

const std::string select_consents =
    "SELECT id, client, use, said, said_on, shown, valid_from, valid_until, how, giver, guardian, "
    "witness, age, note, recorded_at FROM consent ";
const std::string select_papers = "SELECT id, name, path, sha256, bytes, added_at ";

ConsentEntry consent_in(const Statement& row) {
    ConsentEntry entry;
    row.read(entry.id, entry.client, entry.use, entry.said, entry.said_on, entry.shown, entry.from,
             entry.until, entry.how, entry.giver, entry.guardian, entry.witness, entry.age,
             entry.note, entry.recorded_at);
    return entry;
}

ConsentPaper paper_in(const Statement& row) {
    ConsentPaper paper;
    row.read(paper.id, paper.name, paper.path, paper.sha256, paper.bytes, paper.added_at);
    return paper;
}

void read_papers(Database& database, std::vector<ConsentEntry>& entries) {
    std::vector<ConsentId> ids;
    for (const ConsentEntry& entry : entries) ids.push_back(entry.id);
    const std::string list = json_list(std::span<const ConsentId>(ids));
    Statement rows(database,
                   "SELECT consent, id, name, path, sha256, bytes, added_at FROM consent_paper "
                   "JOIN consent_paper_of ON paper = id "
                   "WHERE consent IN (SELECT value FROM json_each(?)) ORDER BY id");
    rows.with(list);
    std::map<ConsentId, std::vector<ConsentPaper>> papers;
    while (rows.step()) {
        ConsentId consent;
        ConsentPaper paper;
        rows.read(consent, paper.id, paper.name, paper.path, paper.sha256, paper.bytes,
                  paper.added_at);
        papers[consent].push_back(std::move(paper));
    }
    for (ConsentEntry& entry : entries) entry.papers = std::move(papers[entry.id]);
}

void check_days(const ConsentEntry& entry) {
    const auto real = [](const std::optional<Date>& date) { return !date || date->ok(); };
    if (!entry.said_on.ok() || !real(entry.from) || !real(entry.until)) {
        throw StoreError("A day was given that no calendar has: correct it.");
    }
    if (entry.said_on > date_of(entry.recorded_at)) {
        throw StoreError("The day on which it was said, " + iso_text(entry.said_on) +
                         ", has not come yet: record it when it is said.");
    }
    if (entry.from && entry.until && *entry.from > *entry.until) {
        throw StoreError("The consent would end on " + iso_text(*entry.until) +
                         ", before it begins on " + iso_text(*entry.from) + ": exchange the two.");
    }
}

void check_words(const ConsentEntry& entry) {
    refuse_unless_text("the note on a consent", entry.note);
    refuse_unless_text("the name of the parent or guardian", entry.guardian);
    refuse_unless_text("the name of the witness", entry.witness);
    if (entry.said == ConsentSaid::withdrawn) return;  // as easily as it can be
    if (entry.how == HowGiven::spoken) refuse_unless_name("the name of the witness", entry.witness);
    if (entry.giver == ConsentGiver::herself) return;
    refuse_unless_name("the name of the parent or guardian", entry.guardian);
    if (!entry.age) {
        throw StoreError(
            "A parent or guardian speaks for a child: say how old the child is as well.");
    }
}

}  // namespace

ConsentId ConsentTable::add(const ConsentEntry& entry) {
    check_days(entry);
    check_words(entry);
    return insert<ConsentId>(
        *database_,
        "INSERT INTO consent (client, use, said, said_on, shown, valid_from, valid_until, how, "
        "giver, guardian, witness, age, note, recorded_at) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        entry.client, entry.use, entry.said, entry.said_on, entry.shown, entry.from, entry.until,
        entry.how, entry.giver, entry.guardian, entry.witness, entry.age, entry.note,
        entry.recorded_at);
}

std::optional<ConsentEntry> ConsentTable::find(ConsentId id) {
    auto found = Statement(*database_, select_consents + "WHERE id = ?").with(id).rows(consent_in);
    read_papers(*database_, found);
    return first_of(std::move(found));
}

std::vector<ConsentEntry> ConsentTable::of(ClientId client) {
    auto found = Statement(*database_, select_consents + "WHERE client = ? ORDER BY id")
                     .with(client)
                     .rows(consent_in);
    read_papers(*database_, found);
    return found;
}

std::vector<ConsentEntry> ConsentTable::all() {
    auto found = Statement(*database_, select_consents + "ORDER BY id").rows(consent_in);
    read_papers(*database_, found);
    return found;
}

ConsentPaperId ConsentTable::add_paper(const ConsentPaper& paper) {
    refuse_unless_text("the name of the file", paper.name);
    return insert<ConsentPaperId>(
        *database_,
        "INSERT INTO consent_paper (name, path, sha256, bytes, added_at) VALUES (?, ?, ?, ?, ?)",
        paper.name, paper.path, paper.sha256, paper.bytes, paper.added_at);
}

void ConsentTable::attach(ConsentPaperId paper, std::span<const ConsentId> entries) {
    Transaction transaction(*database_);
    Statement add(*database_,
                  "INSERT OR IGNORE INTO consent_paper_of (consent, paper) VALUES (?, ?)");
    for (const ConsentId entry : entries) add.with(entry, paper).run();
    transaction.commit();
}

std::vector<ConsentPaper> ConsentTable::papers() {
    return Statement(*database_, select_papers + "FROM consent_paper ORDER BY id").rows(paper_in);
}

std::vector<ConsentEntry> SomeRecords::consents(std::span<const ClientId> clients) {
    const std::string list = json_list(clients);
    auto found =
        Statement(*database_,
                  select_consents + "WHERE client IN (SELECT value FROM json_each(?)) ORDER BY id")
            .with(list)
            .rows(consent_in);
    read_papers(*database_, found);
    return found;
}

std::vector<ClientId> SomeRecords::clients_of_consents_until(Date first, Date last) {
    return Statement(*database_,
                     "SELECT DISTINCT client FROM consent WHERE valid_until BETWEEN ? AND ?")
        .with(first, last)
        .rows([](const Statement& row) {
            ClientId client;
            row.read(client);
            return client;
        });
}

}  // namespace quarterturn
