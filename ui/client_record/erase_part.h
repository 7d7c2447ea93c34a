#pragma once

#include <QWidget>
#include <optional>

#include "indexer/erasure/erase.h"

class QCheckBox;
class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace quarterturn {

class FormButtons;
class Notice;
class Session;

// Says what goes with a client, what stays and why, asks for her name again, and erases her. Hidden
// until it asks.
class ErasePart : public QWidget {
    Q_OBJECT
  public:
    explicit ErasePart(Session& session, QWidget* parent = nullptr);

    void ask(ClientId client);  // throws StoreError
    // What the records say by now; another client on the screen, or none, is not asked about.
    void refresh(std::optional<ClientId> on_screen);

  signals:
    // That she is gone, and where the library still holds her name.
    void erased(const QStringList& sentences);

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void add_fields(QVBoxLayout& column);
    void show_plan(ClientId client);
    void erase();
    void take(const Erased& erased);

    Session& session_;
    std::optional<ErasurePlan> plan_;  // as it stands on the screen
    QLabel* title_;
    QVBoxLayout* words_;
    QCheckBox* shared_;
    QLineEdit* name_;
    Notice* notice_;
    FormButtons* buttons_;
};

}  // namespace quarterturn
