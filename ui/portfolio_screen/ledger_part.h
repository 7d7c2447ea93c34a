#pragma once

#include <QWidget>

#include "indexer/record/ledger.h"

class QVBoxLayout;

namespace quarterturn {

class Session;
class TakeDownList;

// What went out: what has to be taken down, which consents and licences end soon, and all of it,
// the newest first.
class LedgerPart : public QWidget {
    Q_OBJECT
  public:
    explicit LedgerPart(Session& session, QWidget* parent = nullptr);

    void refresh();  // throws StoreError

  private:
    void show_ending(const std::vector<QString>& sentences);
    void show_exports(std::vector<Exported> exports);
    QWidget* make_export(const Exported& exported);
    QWidget* make_place_field(ExportId id);

    Session& session_;
    bool all_ = false;  // also the old ones
    std::vector<Exported> shown_;
    TakeDownList* take_down_;
    QWidget* ending_card_;
    QVBoxLayout* ending_;
    QVBoxLayout* exports_;
};

}  // namespace quarterturn
