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

// Says what goes with a client or with one look of hers, what stays and why, asks for the name
// again, and erases. Hidden until it asks.
class ErasePart : public QWidget {
    Q_OBJECT
  public:
    explicit ErasePart(Session& session, QWidget* parent = nullptr);

    // Both throw StoreError.
    void ask(ClientId client);
    void ask_look(LookId look);
    // What the records say by now; another client on the screen, or none, is not asked about.
    void refresh(std::optional<ClientId> on_screen);

  signals:
    // That she or the look is gone, and where the library still holds her name.
    void erased(const QStringList& sentences);

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void add_fields(QVBoxLayout& column);
    void ask_about(ErasurePlan plan);
    ErasurePlan plan_anew() const;
    void show_plan(ErasurePlan plan);
    void look_beforehand();
    void say_beforehand(const QStringList& sentences);
    void keep_name_in_sight();
    void erase();
    void take(const Erased& erased);

    Session& session_;
    std::optional<ErasurePlan> plan_;  // as it stands on the screen
    QLabel* title_;
    QVBoxLayout* words_;
    QVBoxLayout* beforehand_;  // what the library's files hold of it that will stay
    int asked_ = 0;            // an answer to an earlier question is not shown
    QCheckBox* shared_;
    QLabel* question_;
    QLineEdit* name_;
    Notice* notice_;
    FormButtons* buttons_;
};

}  // namespace quarterturn
