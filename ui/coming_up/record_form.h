#pragma once

#include <QWidget>
#include <optional>

#include "ui/shell/edits.h"

class QFormLayout;
class QVBoxLayout;

namespace quarterturn {

class FormButtons;
class Notice;
class Session;

// A form that changes or adds one record in place: its fields, a sentence when something is wrong,
// and two buttons. Escape leaves everything as it was.
class RecordForm : public QWidget {
    Q_OBJECT
  public:
    RecordForm(Session& session, const QString& title, QWidget* parent = nullptr);

  signals:
    void done();  // saved or left

  protected:
    void keyPressEvent(QKeyEvent* event) override;

    // The edit that saves what the fields say. Throws std::runtime_error with a sentence when a
    // field cannot be so.
    virtual Edit edit() = 0;

    void add_field(const QString& label, QWidget* field);
    void add_below(QWidget* widget);
    Session& session() { return session_; }

  private:
    void save();

    Session& session_;
    QFormLayout* fields_;
    QVBoxLayout* below_;
    Notice* notice_;
    FormButtons* buttons_;
};

}  // namespace quarterturn
