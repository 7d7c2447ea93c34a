#pragma once

#include <QComboBox>
#include <optional>
#include <vector>

#include "indexer/store/change_stamp.h"
#include "indexer/store/library.h"

namespace quarterturn {

class Session;

// Which look a screen is about: every look of the library, by client.
class LookChoice : public QComboBox {
    Q_OBJECT
  public:
    explicit LookChoice(Session& session, QWidget* parent = nullptr);

    // Throws StoreError.
    void show_looks(std::optional<LookId> current);

  signals:
    void chosen(LookId look);

  private:
    void read_names();
    void fill();

    Session& session_;
    ChangeStamp read_at_;
    std::vector<LookName> shown_;  // a library holds thousands, and few of her keys change one
};

// The look in hand, which is then the one she is most likely about if there was none: of the newest
// sitting that has photos, else the first; nothing when there is none. Throws StoreError.
std::optional<LookId> likely_look(Session& session);

}  // namespace quarterturn
