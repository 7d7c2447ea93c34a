#include <sqlite3.h>

#include "indexer/store/store_error.h"

namespace quarterturn {
namespace {

bool inside_one(Database& database) {
    return sqlite3_get_autocommit(database.handle().getHandle()) == 0;
}

}  // namespace

Transaction::Transaction(Database& database)
    : database_(database), outermost_(!inside_one(database)) {
    if (outermost_) database_.refuse_if_replaced();
    execute(outermost_ ? "BEGIN IMMEDIATE" : "SAVEPOINT joined");
}

Transaction::~Transaction() {
    // A full or failing disk has rolled everything back already.
    if (committed_ || !inside_one(database_)) return;
    database_.handle().tryExec(outermost_ ? "ROLLBACK" : "ROLLBACK TO joined; RELEASE joined");
}

void Transaction::commit() {
    if (outermost_) database_.refuse_if_replaced();
    execute(outermost_ ? "COMMIT" : "RELEASE joined");
    committed_ = true;
    if (outermost_) database_.look_again();
}

void Transaction::execute(const char* sql) {
    in_words([&] { database_.handle().exec(sql); }, database_.handle().getHandle());
}

Reading::Reading(Database& database) : database_(database), outermost_(!inside_one(database)) {
    if (!outermost_) return;
    in_words([&] { database_.handle().exec("BEGIN"); }, database_.handle().getHandle());
}

Reading::~Reading() {
    if (outermost_ && inside_one(database_)) database_.handle().tryExec("COMMIT");
}

}  // namespace quarterturn
