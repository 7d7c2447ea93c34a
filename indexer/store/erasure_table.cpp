#include "indexer/store/erasure_table.h"

#include "indexer/store/journal.h"
#include "indexer/store/own_texts.h"
#include "indexer/store/search_table.h"
#include "indexer/store/search_words.h"
#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

std::int64_t row_number_read(const Statement& row) {
    std::int64_t number = 0;
    row.read(number);
    return number;
}

void list_files(Database& database, const std::vector<std::string>& files) {
    for (const std::string& file : files) {
        run(database, "INSERT OR IGNORE INTO erasure_file VALUES (?)", file);
    }
}

// A transaction in which what is only added to may be taken away.
class Erasing {
  public:
    explicit Erasing(Database& database) : database_(database), transaction_(database) {
        run(database_, "INSERT INTO erasing VALUES (1)");
    }

    void commit() {
        let_actions_go(database_, "TRUE");
        SearchTable(database_).rebuild();
        run(database_, "DELETE FROM erasing");
        transaction_.commit();
    }

  private:
    Database& database_;
    Transaction transaction_;
};

// Before the photos go: where SQLite empties the choices itself, a look that is noted already is
// noted a second time, which it refuses.
void forget_choices(Database& database, const std::string& photos) {
    for (const std::string side : {"first", "second"}) {
        run(database,
            "UPDATE pair SET " + side + "_gone = 1, chosen_" + side + " = NULL WHERE chosen_" +
                side + " IN (SELECT value FROM json_each(?))",
            photos);
    }
}

class Eraser {
  public:
    Eraser(Database& database, const ToErase& what)
        : database_(database), what_(what), photos_(json_list<PhotoRow>(what.photos)) {}

    // Within an Erasing.
    ErasureId erase() {
        const ErasureId id = note();
        erase_ledger();
        what_.only ? erase_look() : erase_her();
        return id;
    }

  private:
    void of_her(const std::string& sql) { run(database_, sql, what_.client.id); }
    void of_photos(const std::string& sql) { run(database_, sql, photos_); }

    void erase_look() {
        erase_photos();
        run(database_, "DELETE FROM look WHERE id = ?", *what_.only);
    }

    void erase_her() {
        show_as_stranger();
        erase_consents();
        erase_photos();
        of_her("DELETE FROM inspiration WHERE client = ?");
        erase_people();
    }

    ErasureId note() {
        list_files(database_, what_.files);
        const std::int64_t looks = Statement(database_,
                                             "SELECT count(*) FROM look WHERE client = ?1 "
                                             "AND (?2 IS NULL OR id = ?2)")
                                       .with(what_.client.id, what_.only)
                                       .value<std::int64_t>()
                                       .value_or(0);
        return insert<ErasureId>(database_,
                                 "INSERT INTO erasure (erased_on, photos, looks, sought) VALUES "
                                 "(?, ?, ?, ?)",
                                 what_.on, std::ssize(what_.photos), looks,
                                 sought_text(what_.sought));
    }

    void show_as_stranger() {
        run(database_,
            "INSERT INTO photo_seen (photo, face, strangers, nobody) "
            "SELECT id, NULL, 1, 0 FROM photo WHERE (id IN (SELECT photo FROM photo_shown WHERE "
            "client = ?1) OR sitting IN (SELECT id FROM sitting WHERE client = ?1)) "
            "AND id NOT IN (SELECT value FROM json_each(?2)) "
            "ON CONFLICT (photo) DO UPDATE SET strangers = 1, nobody = 0",
            what_.client.id, photos_);
    }

    // What was taken down goes; what is out there stays until it is.
    void erase_ledger() {
        const std::string hers =
            "(SELECT id FROM export WHERE photo IN (SELECT value FROM json_each(?)) "
            "AND id IN (SELECT export FROM export_taken_down))";
        of_photos("DELETE FROM export_under WHERE export IN " + hers);
        of_photos("DELETE FROM export_place WHERE export IN " + hers);
        const auto gone = Statement(database_, "SELECT id FROM export WHERE id IN " + hers)
                              .with(photos_)
                              .rows(row_number_read);
        run(database_,
            "DELETE FROM export_taken_down WHERE export IN "
            "(SELECT value FROM json_each(?))",
            json_list(gone));
        run(database_, "DELETE FROM export WHERE id IN (SELECT value FROM json_each(?))",
            json_list(gone));
        of_photos(
            "UPDATE export SET photo_name = '', photo_sha256 = '' "
            "WHERE photo IN (SELECT value FROM json_each(?))");
    }

    void erase_consents() {
        const std::string hers = "(SELECT id FROM consent WHERE client = ?)";
        of_her("DELETE FROM export_under WHERE consent IN " + hers);
        const auto papers =
            Statement(database_,
                      "SELECT DISTINCT paper FROM consent_paper_of WHERE consent IN " + hers)
                .with(what_.client.id)
                .rows(row_number_read);
        of_her("DELETE FROM consent_paper_of WHERE consent IN " + hers);
        run(database_, "DELETE FROM consent_paper WHERE id IN (SELECT value FROM json_each(?))",
            json_list(papers));
        of_her("DELETE FROM consent WHERE client = ?");
    }

    void erase_photos() {
        const std::string sums =
            "(SELECT sha256 FROM photo WHERE id IN (SELECT value FROM json_each(?)))";
        of_photos("DELETE FROM seen_file WHERE sha256 IN " + sums);
        of_photos("DELETE FROM sealed_photo WHERE sha256 IN " + sums);
        forget_choices(database_, photos_);
        of_photos("DELETE FROM photo WHERE id IN (SELECT value FROM json_each(?))");
    }

    void erase_people() {
        const auto weddings = ErasureTable(database_).weddings_of_nobody_else(what_.client.id);
        of_her("DELETE FROM look WHERE client = ?");
        of_her("DELETE FROM sitting WHERE client = ?");
        of_her("DELETE FROM client WHERE id = ?");
        run(database_, "DELETE FROM wedding WHERE id IN (SELECT value FROM json_each(?))",
            json_list<WeddingRow>(weddings));
    }

    Database& database_;
    const ToErase& what_;
    std::string photos_;
};

// Those that are to go from the texts of others.
SoughtNames names_that_go(std::span<const ToErase> all) {
    std::vector<std::string> names;
    for (const ToErase& what : all) {
        if (!what.only && what.name_is_hers_alone) names.push_back(what.client.name);
    }
    return SoughtNames(names);
}

}  // namespace

ErasureId ErasureTable::erase(const ToErase& what) {
    refuse_unless_name("the name to erase", what.client.name);
    Erasing erasing(*database_);
    const ErasureId id = Eraser(*database_, what).erase();
    take_names_out(*database_, names_that_go({&what, 1}));
    erasing.commit();
    return id;
}

std::vector<WeddingId> ErasureTable::weddings_of_nobody_else(ClientId client) {
    return Statement(*database_,
                     "WITH of_wedding (wedding, client) AS (SELECT wedding, client FROM "
                     "party_member UNION SELECT wedding, client FROM sitting UNION SELECT wedding, "
                     "client FROM look) "
                     "SELECT id FROM wedding WHERE id IN (SELECT wedding FROM of_wedding WHERE "
                     "client = ?1) AND id NOT IN (SELECT wedding FROM of_wedding WHERE client <> "
                     "?1 AND wedding IS NOT NULL) ORDER BY date, id")
        .with(client)
        .rows([](const Statement& row) {
            WeddingId wedding;
            row.read(wedding);
            return wedding;
        });
}

void ErasureTable::look_after(const ToErase& what, const std::function<void()>& look) {
    const auto look_then = [&] {
        const Erasing taken_back(*database_);
        Eraser(*database_, what).erase();
        look();
    };
    if (database_->only_to_look()) return database_->try_out(look_then);
    try {
        look_then();
    } catch (const NoRoomForRecords&) {
        database_->try_out(look_then);
    }
}

void ErasureTable::leave_one(std::span<const ToErase> others, std::span<const PhotoId> hers) {
    Erasing erasing(*database_);
    for (const ToErase& other : others) Eraser(*database_, other).erase();
    take_names_out(*database_, names_that_go(others));
    const std::string photos = json_list<PhotoRow>(hers);
    const std::string not_hers = " NOT IN (SELECT value FROM json_each(?))";
    const std::string exports = "(SELECT id FROM export WHERE photo" + not_hers + ")";
    for (const char* table : {"export_under", "export_place", "export_taken_down"}) {
        run(*database_, "DELETE FROM " + std::string(table) + " WHERE export IN " + exports,
            photos);
    }
    run(*database_, "DELETE FROM export WHERE photo" + not_hers, photos);
    run(*database_,
        "DELETE FROM seen_file WHERE sha256 IN (SELECT sha256 FROM photo WHERE id" + not_hers + ")",
        photos);
    run(*database_, "DELETE FROM photo WHERE id" + not_hers, photos);
    run(*database_,
        "DELETE FROM selection WHERE id NOT IN (SELECT selection FROM selection_photo)");
    run(*database_, "DELETE FROM erasure");
    run(*database_, "DELETE FROM action");  // pictures that others had kept were never here
    erasing.commit();
}

void ErasureTable::let_go(std::span<const PhotoId> photos, const std::vector<std::string>& files) {
    const std::string these = json_list(photos);
    const std::string among = "IN (SELECT value FROM json_each(?))";
    Transaction transaction(*database_);
    list_files(*database_, files);
    run(*database_,
        "DELETE FROM seen_file WHERE sha256 IN (SELECT sha256 FROM photo WHERE id " + among + ")",
        these);
    forget_choices(*database_, these);
    let_edits_of_photos_go(*database_, photos);
    run(*database_, "DELETE FROM photo WHERE binned IS NOT NULL AND id " + among, these);
    run(*database_,
        "DELETE FROM action WHERE id NOT IN (SELECT action FROM tag_change UNION ALL SELECT action "
        "FROM shift_change UNION ALL SELECT action FROM bin_change UNION ALL SELECT action FROM "
        "records_change)");
    for (const PhotoId photo : photos) index_words(*database_, WordsOf::photo, photo);
    transaction.commit();
}

std::vector<Erasure> ErasureTable::all() {
    return Statement(*database_,
                     "SELECT id, erased_on, photos, looks, finished FROM erasure ORDER BY id")
        .rows([](const Statement& row) {
            Erasure erasure;
            row.read(erasure.id, erasure.on, erasure.photos, erasure.looks, erasure.finished);
            return erasure;
        });
}

}  // namespace quarterturn
