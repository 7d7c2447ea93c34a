#include "indexer/store/credit_table.h"

#include "indexer/store/inspiration_table.h"
#include "indexer/store/some_records.h"
#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

void check(const Credit& credit) {
    refuse_unless_text("the credit line", credit.line.value_or(""));
    if (credit.whose == Whose::photographer) {
        refuse_unless_name("the photographer's name", credit.name);
    }
    refuse_unless_text("whose photo it is", credit.name);
    if (credit.until && !credit.until->ok()) {
        throw StoreError("For the end of the licence, a day was given that no calendar has.");
    }
}

void refuse_what_clients_brought(Database& database, std::span<const PhotoId> photos) {
    const auto names = InspirationTable(database).names_among(photos);
    if (names.empty()) return;
    throw StoreError(names.front() +
                     " is kept as somebody else's work, among the pictures that clients brought, "
                     "and is never passed on. If it is your own work, remove it there first.");
}

std::map<PhotoId, Credit> credits_in(Statement& rows) {
    std::map<PhotoId, Credit> credits;
    while (rows.step()) {
        PhotoId photo;
        Credit credit;
        std::optional<Use> use;
        bool brought = false;
        rows.read(photo, credit.whose, credit.name, credit.until, credit.line, use, brought);
        if (brought) {
            credit = {};
            credit.whose = Whose::somebody_else;
            use.reset();
        }
        const auto found = credits.emplace(photo, std::move(credit)).first;
        if (use) found->second.licensed.push_back(*use);
    }
    for (auto& [photo, credit] : credits) std::ranges::sort(credit.licensed);
    return credits;
}

const std::string select_credits =
    "SELECT photo_credit.photo, whose, name, valid_until, line, use, photo_credit.photo IN "
    "(SELECT photo.id FROM photo JOIN inspiration USING (sha256)) FROM photo_credit "
    "LEFT JOIN photo_licence ON photo_licence.photo = photo_credit.photo ";

const std::string select_seen = "SELECT photo, face, strangers, nobody FROM photo_seen ";

std::map<PhotoId, Seen> all_seen_in(Statement& rows) {
    std::map<PhotoId, Seen> all;
    while (rows.step()) {
        PhotoId photo;
        Seen seen;
        rows.read(photo, seen.face, seen.strangers, seen.nobody);
        all.emplace(photo, seen);
    }
    return all;
}

}  // namespace

void CreditTable::set(std::span<const PhotoId> photos, const Credit& credit) {
    check(credit);
    if (credit.whose != Whose::somebody_else) refuse_what_clients_brought(*database_, photos);
    Transaction transaction(*database_);
    Statement forget(*database_, "DELETE FROM photo_licence WHERE photo = ?");
    Statement write(*database_,
                    "INSERT INTO photo_credit (photo, whose, name, valid_until, line) "
                    "VALUES (?, ?, ?, ?, ?) ON CONFLICT (photo) DO UPDATE SET whose = "
                    "excluded.whose, name = excluded.name, valid_until = excluded.valid_until, "
                    "line = excluded.line");
    Statement license(*database_, "INSERT OR IGNORE INTO photo_licence (photo, use) VALUES (?, ?)");
    for (const PhotoId photo : photos) {
        forget.with(photo).run();
        write.with(photo, credit.whose, credit.name, credit.until, credit.line).run();
        for (const Use use : credit.licensed) license.with(photo, use).run();
    }
    transaction.commit();
}

void CreditTable::forget(std::span<const PhotoId> photos) {
    Transaction transaction(*database_);
    Statement licences(*database_, "DELETE FROM photo_licence WHERE photo = ?");
    Statement credits(*database_, "DELETE FROM photo_credit WHERE photo = ?");
    for (const PhotoId photo : photos) {
        licences.with(photo).run();
        credits.with(photo).run();
    }
    transaction.commit();
}

std::optional<Credit> CreditTable::of(PhotoId photo) {
    Statement rows(*database_, select_credits + "WHERE photo_credit.photo = ?");
    auto found = credits_in(rows.with(photo));
    if (found.empty()) return std::nullopt;
    return std::move(found.begin()->second);
}

std::map<PhotoId, Credit> CreditTable::all() {
    Statement rows(*database_, select_credits +
                                   "WHERE photo_credit.photo NOT IN "
                                   "(SELECT id FROM photo WHERE binned IS NOT NULL)");
    return credits_in(rows);
}

void CreditTable::set_seen(PhotoId photo, const Seen& seen) {
    run(*database_,
        "INSERT OR REPLACE INTO photo_seen (photo, face, strangers, nobody) VALUES (?, ?, ?, ?)",
        photo, seen.face, seen.strangers, seen.nobody);
}

Seen CreditTable::seen(PhotoId photo) {
    return Statement(*database_, "SELECT face, strangers, nobody FROM photo_seen WHERE photo = ?")
        .with(photo)
        .first([](const Statement& row) {
            Seen seen;
            row.read(seen.face, seen.strangers, seen.nobody);
            return seen;
        })
        .value_or(Seen{});
}

std::map<PhotoId, Seen> CreditTable::all_seen() {
    Statement rows(*database_, select_seen);
    return all_seen_in(rows);
}

std::map<PhotoId, Credit> SomeRecords::credits(std::span<const PhotoId> photos) {
    const std::string list = json_list(photos);
    Statement rows(*database_,
                   select_credits + "WHERE photo_credit.photo IN (SELECT value FROM json_each(?))");
    return credits_in(rows.with(list));
}

std::map<PhotoId, Credit> SomeRecords::credits_until(Date first, Date last) {
    Statement rows(*database_,
                   select_credits +
                       "WHERE valid_until BETWEEN ? AND ? AND photo_credit.photo NOT IN "
                       "(SELECT id FROM photo WHERE binned IS NOT NULL)");
    return credits_in(rows.with(first, last));
}

std::map<PhotoId, Seen> SomeRecords::seen(std::span<const PhotoId> photos) {
    const std::string list = json_list(photos);
    Statement rows(*database_, select_seen + "WHERE photo IN (SELECT value FROM json_each(?))");
    return all_seen_in(rows.with(list));
}

}  // namespace quarterturn
