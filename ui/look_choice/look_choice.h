#pragma once

#include <QComboBox>
#include <optional>

#include "indexer/store/library.h"

namespace quarterturn {

class Session;

// Which look a screen is about: every look of the library, by client.
class LookChoice : public QComboBox {
    Q_OBJECT
  public:
    explicit LookChoice(Session& session, QWidget* parent = nullptr);

    void show_looks(std::optional<LookId> current);  // throws StoreError

  signals:
    void chosen(LookId look);

  private:
    Session& session_;
};

// The look in hand, which is then the one she is most likely about if there was none: of the newest
// sitting that has photos, else the first; nothing when there is none. Throws StoreError.
std::optional<LookId> likely_look(Session& session);

}  // namespace quarterturn
